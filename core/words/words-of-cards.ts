import type { CardId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import type { Taught } from '../language/taught.ts';
import { decodableWords } from './decodable.ts';
import type { Lexicon } from './lexicon.ts';
import type { WordScreen } from './screen.ts';

/** What words are looked for in. */
export interface WordSources {
  readonly taught: Taught;
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
}

/**
 * For each of some cards up to `most` words that show it: regular words of taught cards, the commonest first,
 * fit to be said in class, no word twice. A cluster is shown where its letters stand together. One pass over
 * the words that can be read.
 */
export function wordsOfCards(
  ids: readonly CardId[],
  most: number,
  { taught, lexicon, screen }: WordSources,
): ReadonlyMap<CardId, readonly string[]> {
  const found = new Map<CardId, string[]>(ids.map((id) => [id, []]));
  const patterns = [...found.keys()].map((id) => {
    const parts = correspondenceById.get(id)?.parts ?? [];
    return { id, row: ` ${(parts.length > 0 ? parts : [id]).join(' ')} ` };
  });
  let open = patterns;
  const readable = decodableWords(lexicon, taught).filter((index) => lexicon.isRegular(index));
  const isShort = (index: number) => lexicon.word(index).length < 3;
  // Words such as am and it show little: they come where there is no longer one.
  for (const index of [...readable.filter((each) => !isShort(each)), ...readable.filter(isShort)]) {
    if (open.length === 0) break;
    const row = ` ${lexicon.cardIds(index).join(' ')} `;
    const shown = open.find((pattern) => row.includes(pattern.row));
    if (!shown) continue;
    const word = lexicon.word(index);
    const keyword = correspondenceById.get(shown.id)?.keyword;
    const [reading] = lexicon.readings(index);
    if (word.length < 2 || word === keyword || !reading) continue;
    if (screen.judge(word, reading.sounds).verdict !== 'clear') continue;
    const words = found.get(shown.id)!;
    words.push(word);
    if (words.length >= most) open = open.filter((pattern) => pattern !== shown);
  }
  return found;
}
