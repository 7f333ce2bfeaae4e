import type { DictationSources } from '../../../core/dictation/dictation.ts';
import { homePractice, type Practiced } from '../../../core/dictation/home-practice.ts';
import { asWritten } from '../../../core/language/as-written.ts';
import type { Taught } from '../../../core/language/taught.ts';
import { find } from '../find.ts';
import { isFitEntry } from '../fit-entries.ts';
import type { WordWish } from '../wish.ts';
import type { Choices } from './print-choices.ts';
import type { WordsToRead } from './stock.ts';

/** What lists of words are made of. */
interface WordStock {
  readonly taught: Taught;
  readonly practiced: () => Practiced;
  readonly seed: number;
  /** What she looked for among the words last, and what the list is called. */
  readonly wish: WordWish;
  readonly listTitle: string;
  readonly sources: DictationSources;
}

/** Words that show what is new, or those she looked for, as many as she chose; all through the word screen. */
export function wordsToRead({ list, length }: Choices, stock: WordStock): WordsToRead {
  const { practiced, seed, listTitle, sources } = stock;
  if (list === 'found') return { title: listTitle, words: wordsFound(length, stock) };
  const { words } = homePractice(practiced(), { seed, words: length, sentences: 0 }, sources);
  return { title: 'Words to read', words: words.map(({ text }) => text) };
}

/** The first words or pairs of what she looked for that the word screen clears. */
function wordsFound(most: number, { wish, taught, sources }: WordStock): readonly string[] {
  const texts: string[] = [];
  for (const entry of find(wish, taught, sources)) {
    if (texts.length === most) break;
    if (!isFitEntry(entry, wish.asked, sources)) continue;
    texts.push(entry.map((index) => asWritten(sources.lexicon.word(index))).join(' / '));
  }
  return texts;
}
