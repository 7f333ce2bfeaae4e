/**
 * The word-list file: what its bytes mean, for the build step that writes it
 * and the engine that reads it.
 *
 * Words stand in alphabetical order, each as the number of letters it shares
 * with the word before it and the letters that follow. A card is stored as its
 * rank among the cards that could begin at that letter, the commonest first,
 * so that most are 0; syllable breaks as letters kept back from the next vowel
 * card. Values of one kind lie together in one stream, which is what a general
 * compressor wants. An arithmetic coder of our own was rejected: brotli comes
 * free with every browser and gets within a few percent.
 *
 * Layout: MAGIC, then each stream of STREAMS as its length in bytes (varint)
 * and its bytes. All numbers are one byte, or varints of seven bits, low first.
 */
import { type CardId, graphemeOf } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isNucleus } from '../language/syllables.ts';

/** First bytes of the file: its name and version. */
export const MAGIC = 'sweepline-words-1\n';

/**
 * The streams in order. `cards`: ids used, commonest first, one a line.
 * `shared`, `letters`: the words. `bands`: one byte a word. `extra`: words with
 * more than one reading, as (distance from the last such word, readings - 1).
 * `irregular`: words whose ordinary reading is irregular, as distances.
 * `ranks`: one byte a card. `kept`: one byte for each pair of vowel cards.
 */
export const STREAMS = [
  'cards',
  'shared',
  'letters',
  'bands',
  'extra',
  'irregular',
  'ranks',
  'kept',
] as const;
export type StreamName = (typeof STREAMS)[number];

/** A card as the file's ranks see it. */
export interface FileCard {
  readonly id: CardId;
  /** Its place in the file's list of ids. */
  readonly number: number;
  /** The letters it covers before any split e. */
  readonly letters: string;
  readonly split: boolean;
  /** Whether it makes a syllable. */
  readonly nucleus: boolean;
}

/** Cards by the character code of their first letter, each group in the file's order. */
export type CardTable = readonly (readonly FileCard[] | undefined)[];

/** The cards of ids in the file's order, and the table that ranks are looked up in. */
export function makeCardTable(ids: readonly CardId[]): {
  readonly cards: readonly FileCard[];
  readonly table: CardTable;
} {
  const table: FileCard[][] = [];
  const cards = ids.map((id, number): FileCard => {
    const grapheme = graphemeOf(id);
    const letters = grapheme.replace('_e', '');
    return { id, number, letters, split: letters !== grapheme, nucleus: isNucleusId(id) };
  });
  for (const card of cards) {
    const code = card.letters.charCodeAt(0);
    const group = table[code];
    if (group) group.push(card);
    else table[code] = [card];
  }
  return { cards, table };
}

function isNucleusId(id: CardId): boolean {
  const known = correspondenceById.get(id);
  if (known) return isNucleus(known);
  return /[=?+][AEIOU][A-Z]/.test(id);
}

/** Whether a card could begin at letter `at`: its letters stand there, and its e may follow. */
export function couldStand({ letters, split }: FileCard, word: string, at: number): boolean {
  if (split) return word[at + 2] === 'e' || word[at + 3] === 'e';
  return letters.length === 1 || word.startsWith(letters, at);
}

/** Appends a number as a varint. */
export function pushVarint(bytes: number[], value: number): void {
  let rest = value;
  while (rest > 127) {
    bytes.push((rest & 127) | 128);
    rest >>>= 7;
  }
  bytes.push(rest);
}

/** Reads the varint at `at`: its value and the position after it. */
export function readVarint(
  bytes: Uint8Array,
  at: number,
): { readonly value: number; readonly next: number } {
  let value = 0;
  let shift = 0;
  for (let next = at; next < bytes.length; next++) {
    const byte = bytes[next] as number;
    value |= (byte & 127) << shift;
    if (byte < 128) return { value, next: next + 1 };
    shift += 7;
  }
  throw new Error('The word list is cut short. Load it again.');
}
