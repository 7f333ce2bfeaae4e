import { type CardId, isCardId, soundsOf } from '../language/card-id.ts';
import {
  type CardTable,
  couldStand,
  type FileCard,
  makeCardTable,
  readVarint,
  type StreamName,
} from './lexicon-streams.ts';

/** What the file holds of a reading: its cards and where syllables after the first begin. */
export interface StoredReading {
  readonly ids: readonly CardId[];
  readonly breaks: readonly number[];
}

/** The readings of the whole list, by the word's place in the file. */
export interface StoredReadings {
  of(place: number): readonly StoredReading[];
  /** Card ids of the ordinary reading. */
  idsOf(place: number): readonly CardId[];
  /** How many syllables the ordinary reading has. */
  syllablesOf(place: number): number;
  /** The sounds of each reading, phonemes joined by a space. */
  soundsOf(place: number): readonly string[];
}

/**
 * Walks the ranks once, so that each word's cards can be found. Cards and
 * breaks lie in two flat arrays; a word's readings are cut out when asked for.
 */
export function readStoredReadings(
  streams: Readonly<Record<StreamName, Uint8Array>>,
  words: readonly string[],
): StoredReadings {
  const { table, cards } = makeCardTable(linesOf(streams.cards).filter(isCardId));
  const { counts, total } = countReadings(streams.extra, words.length);
  const flat = new Uint16Array(streams.ranks.length);
  const edges = new Uint8Array(streams.kept.length);
  const cardEnds = new Uint32Array(total + 1);
  const edgeEnds = new Uint32Array(total + 1);
  const firsts = new Uint32Array(words.length);
  const walk: Walk = {
    table,
    ranks: streams.ranks,
    kept: streams.kept,
    flat,
    edges,
    rank: 0,
    pair: 0,
    edge: 0,
  };
  let reading = 0;
  for (let place = 0; place < words.length; place++) {
    firsts[place] = reading;
    for (let left = counts[place] as number; left > 0; left--) {
      walkReading(words[place] as string, walk);
      cardEnds[++reading] = walk.rank;
      edgeEnds[reading] = walk.edge;
    }
  }
  const idsAt = (at: number): CardId[] => {
    const ids: CardId[] = [];
    for (let card = cardEnds[at] as number; card < (cardEnds[at + 1] as number); card++) {
      ids.push((cards[flat[card] as number] as FileCard).id);
    }
    return ids;
  };
  const cut = (at: number): StoredReading => ({
    ids: idsAt(at),
    breaks: Array.from(edges.subarray(edgeEnds[at], edgeEnds[at + 1])),
  });
  const sounds = cards.map(({ id }) => soundsOfId(id));
  const say = (at: number): string => {
    let said = '';
    for (let card = cardEnds[at] as number; card < (cardEnds[at + 1] as number); card++) {
      said += sounds[flat[card] as number];
    }
    return said.slice(1);
  };
  const each = <T>(place: number, make: (at: number) => T): T[] =>
    Array.from({ length: counts[place] as number }, (_, offset) =>
      make((firsts[place] as number) + offset),
    );
  return {
    of: (place) => each(place, cut),
    idsOf: (place) => idsAt(firsts[place] as number),
    syllablesOf(place) {
      const at = firsts[place] as number;
      return 1 + (edgeEnds[at + 1] as number) - (edgeEnds[at] as number);
    },
    soundsOf: (place) => each(place, say),
  };
}

/** The sounds in a card's id, a space before each; none when silent. */
function soundsOfId(id: CardId): string {
  return soundsOf(id)
    .map((sound) => ` ${sound}`)
    .join('');
}

function linesOf(bytes: Uint8Array): readonly string[] {
  return String.fromCharCode(...bytes).split('\n');
}

function countReadings(extra: Uint8Array, size: number): { counts: Uint8Array; total: number } {
  const counts = new Uint8Array(size).fill(1);
  let total = size;
  let word = 0;
  for (let at = 0; at < extra.length; ) {
    const distance = readVarint(extra, at);
    word += distance.value;
    const more = readVarint(extra, distance.next);
    counts[word] = 1 + more.value;
    total += more.value;
    at = more.next;
  }
  return { counts, total };
}

/** Where the walk over the streams stands, and what it has laid down. */
interface Walk {
  readonly table: CardTable;
  readonly ranks: Uint8Array;
  readonly kept: Uint8Array;
  readonly flat: Uint16Array;
  readonly edges: Uint8Array;
  rank: number;
  pair: number;
  edge: number;
}

function walkReading(word: string, walk: Walk): void {
  let split = false;
  let lastVowel = -1;
  for (let at = 0; at < word.length; ) {
    if (split && word[at] === 'e') {
      split = false;
      at++;
      continue;
    }
    const card = cardOfRank(walk.table, word, at, walk.ranks[walk.rank] as number);
    walk.flat[walk.rank++] = card.number;
    if (card.nucleus) {
      if (lastVowel >= 0) {
        const edge = at - (walk.kept[walk.pair++] as number);
        if (edge > lastVowel) walk.edges[walk.edge++] = edge;
      }
      lastVowel = at;
    }
    split ||= card.split;
    at += card.letters.length;
  }
}

function cardOfRank(table: CardTable, word: string, at: number, rank: number): FileCard {
  let left = rank;
  for (const card of table[word.charCodeAt(at)] ?? []) {
    if (couldStand(card, word, at) && left-- === 0) return card;
  }
  throw new Error(`The word list names no card for ${word} at letter ${at + 1}.`);
}
