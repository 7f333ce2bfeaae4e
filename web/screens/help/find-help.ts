import { factsOf } from '../../state/screens.ts';
import { type GlossaryWord, meaningOf, WORDS } from '../../wording/help/glossary.ts';
import type { Topic } from '../../wording/help/topic.ts';
import { TOPICS } from '../../wording/help/topics.ts';

/** The topics that have all of these words, or parts of them; without any, all topics. */
export function topicsWith(sought: string): readonly Topic[] {
  return TOPICS.filter(({ screen, about, ways, words }) =>
    hasAll([factsOf(screen).title, about, ...ways, ...words].join(' ').replaceAll('*', ''), sought),
  );
}

/** The words of the glossary that have all of these, in themselves or in what they mean. */
export function wordsWith(sought: string): readonly GlossaryWord[] {
  return WORDS.filter((word) => hasAll(`${word} ${meaningOf(word).means}`, sought));
}

function hasAll(text: string, sought: string): boolean {
  const low = plain(text);
  return plain(sought)
    .split(/\s+/)
    .every((part) => low.includes(part));
}

function plain(text: string): string {
  return text.toLowerCase().replaceAll('’', "'").trim();
}
