import { lettersShown } from '../../../core/language/card-id.ts';
import type { ChildStory } from '../../../core/story/child-story.ts';
import type { StoryWords } from './family-words.ts';

/** So many cards are named for a family. */
const MOST = 4;

/**
 * What a family should know of a child's reading, in another language than English: what goes well, and what is
 * being practiced, without the child's name and without the counts that only a teacher can weigh.
 */
export function storyIn(words: StoryWords, story: ChildStory): string {
  const { asked, right, strengths, troubles } = story;
  if (asked === 0) return words.nothing;
  const families = strengths.map(({ family }) => words.families[family]);
  const cards = [...new Set(troubles.flatMap((trouble) => trouble.cards.map(lettersShown)))];
  const clauses = [
    families.length > 0 ? words.surely(families.join(` ${words.and} `)) : words.right(right, asked),
    ...(cards.length > 0 ? [words.practicing(cards.slice(0, MOST).join(', '))] : []),
  ];
  const text = clauses.join('; ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
