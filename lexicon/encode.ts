import type { CardId } from '../core/language/card-id.ts';
import type { Reading } from '../core/language/reading.ts';
import type { Band } from '../core/words/lexicon.ts';
import {
  type CardTable,
  couldStand,
  MAGIC,
  makeCardTable,
  pushVarint,
  STREAMS,
  type StreamName,
} from '../core/words/lexicon-streams.ts';

/** A word with its readings, as the file keeps it. */
export interface ListedWord {
  readonly word: string;
  readonly band: Band;
  readonly readings: readonly Reading[];
}

/** The word-list file: the inverse of `decodeLexicon`. Deterministic; words in any order. */
export function encodeLexicon(listed: readonly ListedWord[]): Uint8Array {
  const words = [...listed].sort((a, b) => (a.word < b.word ? -1 : 1));
  const ids = commonestIds(words);
  const streams = Object.fromEntries(STREAMS.map((name) => [name, []])) as unknown as Record<
    StreamName,
    number[]
  >;
  streams.cards = [...ids.join('\n')].map((letter) => letter.charCodeAt(0));
  const { table } = makeCardTable(ids);
  let last = '';
  let lastExtra = 0;
  let lastIrregular = 0;
  for (const [index, { word, band, readings }] of words.entries()) {
    const shared = sharedLetters(last, word);
    streams.shared.push(shared);
    for (const letter of `${word.slice(shared)}\n`) streams.letters.push(letter.charCodeAt(0));
    streams.bands.push(band);
    if (readings.length > 1) {
      pushVarint(streams.extra, index - lastExtra);
      pushVarint(streams.extra, readings.length - 1);
      lastExtra = index;
    }
    if (!isAllRegular(readings[0] as Reading)) {
      pushVarint(streams.irregular, index - lastIrregular);
      lastIrregular = index;
    }
    for (const reading of readings) encodeReading(reading, table, streams);
    last = word;
  }
  streams.letters.pop();
  return join(streams);
}

function isAllRegular({ cards, fallback }: Reading): boolean {
  return !fallback && cards.every(({ regular }) => regular);
}

function sharedLetters(a: string, b: string): number {
  let count = 0;
  while (count < a.length && a[count] === b[count]) count++;
  return count;
}

/** Every id in use, the commonest first. */
function commonestIds(words: readonly ListedWord[]): readonly CardId[] {
  const uses = new Map<CardId, number>();
  for (const { readings } of words) {
    for (const { id } of readings.flatMap(({ cards }) => cards)) {
      uses.set(id, (uses.get(id) ?? 0) + 1);
    }
  }
  return [...uses].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([id]) => id);
}

function encodeReading(
  { word, cards, syllables }: Reading,
  table: CardTable,
  streams: Readonly<Record<StreamName, number[]>>,
): void {
  const breaks = syllables.slice(1).map(({ from }) => from);
  let lastVowel = -1;
  for (const { id, letters } of cards) {
    const at = letters[0] as number;
    const standing = (table[word.charCodeAt(at)] ?? []).filter((card) =>
      couldStand(card, word, at),
    );
    const rank = standing.findIndex((card) => card.id === id);
    if (rank < 0) throw new Error(`${id} cannot stand at letter ${at + 1} of ${word}.`);
    streams.ranks.push(rank);
    if (!standing[rank]?.nucleus) continue;
    if (lastVowel >= 0) {
      const between = breaks.filter((edge) => edge > lastVowel && edge <= at);
      if (between.length > 1) throw new Error(`${word} has two breaks between two vowels.`);
      const [edge] = between;
      streams.kept.push(edge === undefined ? at - lastVowel : at - edge);
    }
    lastVowel = at;
  }
}

function join(streams: Readonly<Record<StreamName, readonly number[]>>): Uint8Array {
  const bytes = [...MAGIC].map((letter) => letter.charCodeAt(0));
  for (const name of STREAMS) {
    pushVarint(bytes, streams[name].length);
    for (const byte of streams[name]) bytes.push(byte);
  }
  return Uint8Array.from(bytes);
}
