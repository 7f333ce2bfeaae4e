import { assembleReading } from '../language/assemble.ts';
import type { Reading } from '../language/reading.ts';
import type { Band, Lexicon } from './lexicon.ts';
import { MAGIC, readVarint, STREAMS, type StreamName } from './lexicon-streams.ts';
import { readStoredReadings } from './stored-readings.ts';

/**
 * Reads the word-list file. Words and bands are decoded at once, cards for the
 * whole list when a reading is first asked for, readings one by one and kept.
 * Throws when the bytes are no word list of this version.
 */
export function decodeLexicon(bytes: Uint8Array): Lexicon {
  const streams = readStreams(bytes);
  const spelled = readWords(streams.shared, streams.letters);
  const order = commonestFirst(spelled, streams.bands);
  const words = Array.from(order, (at) => spelled[at] as string);
  const byWord = once(() => new Map(words.map((word, index) => [word, index])));
  const irregular = markPlaces(streams.irregular, words.length);
  const stored = once(() => readStoredReadings(streams, spelled));
  const bySound = once(() =>
    groupBySound(words.length, (index) => stored().soundsOf(order[index] as number)),
  );
  const made: (readonly Reading[] | undefined)[] = new Array(words.length);
  return {
    size: words.length,
    word: (index) => words[index] as string,
    band: (index) => streams.bands[order[index] as number] as Band,
    indexOf: (word) => byWord().get(word) ?? -1,
    readings(index) {
      made[index] ??= stored()
        .of(order[index] as number)
        .map(({ ids, breaks }) => assembleReading(words[index] as string, ids, breaks));
      return made[index];
    },
    cardIds: (index) => stored().idsOf(order[index] as number),
    isRegular: (index) => irregular[order[index] as number] === 0,
    syllableCount: (index) => stored().syllablesOf(order[index] as number),
    saidAs: (sounds) => bySound().get(sounds) ?? [],
  };
}

function once<T>(make: () => T): () => T {
  let value: T | undefined;
  return () => {
    value ??= make();
    return value;
  };
}

function readStreams(bytes: Uint8Array): Readonly<Record<StreamName, Uint8Array>> {
  if (textOf(bytes.subarray(0, MAGIC.length)) !== MAGIC) {
    throw new Error('This is not a word list that this version can read. Load it again.');
  }
  let at = MAGIC.length;
  const streams: Partial<Record<StreamName, Uint8Array>> = {};
  for (const name of STREAMS) {
    const { value, next } = readVarint(bytes, at);
    at = next + value;
    if (at > bytes.length) throw new Error('The word list is cut short. Load it again.');
    streams[name] = bytes.subarray(next, at);
  }
  return streams as Record<StreamName, Uint8Array>;
}

/** ASCII bytes as text, in pieces that a call's arguments can hold. */
function textOf(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 8192) {
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  }
  return text;
}

/**
 * Writes the whole list out as one text before cutting it: many times faster
 * than joining each word's two pieces.
 */
function readWords(shared: Uint8Array, letters: Uint8Array): readonly string[] {
  let total = letters.length;
  for (const count of shared) total += count;
  const text = new Uint8Array(total);
  let from = 0;
  let last = 0;
  let to = 0;
  for (const count of shared) {
    const start = to;
    for (let at = last; at < last + count; at++) text[to++] = text[at] as number;
    while (from < letters.length && letters[from] !== LINE_END) {
      text[to++] = letters[from++] as number;
    }
    if (from++ < letters.length) text[to++] = LINE_END;
    last = start;
  }
  return textOf(text).split('\n');
}

const LINE_END = 10;

const LONGEST_WORD = 64;

/** Places in the file by band, shorter words first, then by the alphabet: a counting sort. */
function commonestFirst(words: readonly string[], bands: Uint8Array): Uint32Array {
  const key = (at: number) =>
    (bands[at] as number) * LONGEST_WORD + Math.min((words[at] as string).length, LONGEST_WORD - 1);
  const starts = new Uint32Array(256 * LONGEST_WORD + 1);
  for (let at = 0; at < words.length; at++) (starts[key(at) + 1] as number)++;
  for (let slot = 1; slot < starts.length; slot++) {
    (starts[slot] as number) += starts[slot - 1] as number;
  }
  const order = new Uint32Array(words.length);
  for (let at = 0; at < words.length; at++) order[(starts[key(at)] as number)++] = at;
  return order;
}

/** A 1 at each place that the stream of distances names. */
function markPlaces(distances: Uint8Array, size: number): Uint8Array {
  const marks = new Uint8Array(size);
  let place = 0;
  for (let at = 0; at < distances.length; ) {
    const { value, next } = readVarint(distances, at);
    place += value;
    marks[place] = 1;
    at = next;
  }
  return marks;
}

function groupBySound(
  size: number,
  soundsOf: (index: number) => readonly string[],
): ReadonlyMap<string, readonly number[]> {
  const groups = new Map<string, number[]>();
  for (let index = 0; index < size; index++) {
    for (const sounds of soundsOf(index)) {
      const group = groups.get(sounds);
      if (!group) groups.set(sounds, [index]);
      else if (group.at(-1) !== index) group.push(index);
    }
  }
  return groups;
}
