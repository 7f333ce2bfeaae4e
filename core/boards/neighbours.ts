/**
 * Real neighbours of a row of sounds: the familiar words that differ from it in
 * one sound, put in, left out or changed.
 *
 * Reference: Coltheart, Davelaar, Jonasson & Besner, "Access to the internal
 * lexicon", Attention and Performance VI (1977), for letters; Luce & Pisoni,
 * "Recognizing spoken words: the neighborhood activation model", Ear and Hearing
 * 19 (1998), for sounds.
 *
 * Method: each word is laid down as itself, with each sound blanked and with
 * each sound left out, as whole numbers in three sorted lists; a neighbour is
 * then an equal number, found by halving. Some 70 ms once for a list, then
 * O(sounds × log words). Trying every phoneme at every place, the other way,
 * takes forty times as many look-ups for each word.
 */
import { PHONEMES, type Phoneme } from '../language/phonemes.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { soundsOfCards } from '../words/phonotactics.ts';
import { SOUND_ALIKE_BAND } from './judge.ts';

/**
 * How many familiar words, by their ordinary reading, differ from these sounds
 * in one sound. Words of more than nine sounds, which have next to no
 * neighbours, count none.
 */
export function realNeighbours(sounds: readonly Phoneme[], lexicon: Lexicon): number {
  const { whole, blanked, shortened } = patternsIn(lexicon);
  const codes = sounds.map(codeOf);
  if (codes.length > LONGEST) return 0;
  const same = countOf(whole, keyOf(codes));
  let count = countOf(shortened, keyOf(codes));
  for (let at = 0; at < codes.length; at++) {
    count += countOf(blanked, keyOf(codes, at, BLANK)) - same;
    if (codes[at] !== codes[at - 1]) count += countOf(whole, keyOf(codes, at, NOTHING));
  }
  return count;
}

/** Words and what is left of them, as numbers in ascending order. */
interface Patterns {
  readonly whole: Float64Array;
  readonly blanked: Float64Array;
  readonly shortened: Float64Array;
}

/** So many sounds still make a number that is exact as a double. */
const LONGEST = 9;
const BLANK = PHONEMES.length + 1;
const NOTHING = 0;
const BASE = BLANK + 1;

const places = new Map<Phoneme, number>(PHONEMES.map((phoneme, at) => [phoneme, at + 1]));
const known = new WeakMap<Lexicon, Patterns>();

function codeOf(phoneme: Phoneme): number {
  return places.get(phoneme) as number;
}

/** Sounds as one number, with the sound at `changed` blanked or left out. */
function keyOf(codes: readonly number[], changed = -1, instead = NOTHING): number {
  let key = 0;
  for (let at = 0; at < codes.length; at++) {
    const code = at === changed ? instead : (codes[at] as number);
    if (code !== NOTHING) key = key * BASE + code;
  }
  return key;
}

function patternsIn(lexicon: Lexicon): Patterns {
  let patterns = known.get(lexicon);
  if (!patterns) {
    patterns = layDown(lexicon);
    known.set(lexicon, patterns);
  }
  return patterns;
}

function layDown(lexicon: Lexicon): Patterns {
  const whole: number[] = [];
  const blanked: number[] = [];
  const shortened: number[] = [];
  for (let index = 0; index < lexicon.size; index++) {
    if (lexicon.band(index) > SOUND_ALIKE_BAND) continue;
    const codes = soundsOfCards(lexicon.cardIds(index))?.map(codeOf);
    if (!codes || codes.length > LONGEST) continue;
    whole.push(keyOf(codes));
    for (let at = 0; at < codes.length; at++) {
      blanked.push(keyOf(codes, at, BLANK));
      if (codes[at] !== codes[at - 1]) shortened.push(keyOf(codes, at, NOTHING));
    }
  }
  return { whole: sorted(whole), blanked: sorted(blanked), shortened: sorted(shortened) };
}

function sorted(keys: readonly number[]): Float64Array {
  return Float64Array.from(keys).sort();
}

/** How often a number stands in a sorted list. */
function countOf(keys: Float64Array, key: number): number {
  const first = firstFrom(keys, key);
  return keys[first] === key ? firstFrom(keys, key + 1) - first : 0;
}

/** The first place whose number is not below `key`. */
function firstFrom(keys: Float64Array, key: number): number {
  let from = 0;
  let to = keys.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((keys[middle] as number) < key) from = middle + 1;
    else to = middle;
  }
  return from;
}
