/**
 * Real neighbors of a row of sounds: the familiar words that differ from it in
 * one sound, put in, left out or changed.
 *
 * Reference: Coltheart, Davelaar, Jonasson & Besner, "Access to the internal
 * lexicon", Attention and Performance VI (1977), for letters; Luce & Pisoni,
 * "Recognizing spoken words: the neighborhood activation model", Ear and Hearing
 * 19 (1998), for sounds.
 *
 * Method: each word is laid down as itself, with each sound blanked and with
 * each sound left out, as whole numbers in three tables that count them
 * (core/boards/judge/key-counts.ts); a neighbor is then an equal number. Some 40 ms
 * once for a list, then O(sounds). Trying every phoneme at every place, the
 * other way, takes forty times as many look-ups for each word.
 */
import { PHONEMES, type Phoneme } from '../../language/phonemes.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import { soundsOfCards } from '../../words/phonotactics.ts';
import { countKeys, type KeyCounts } from './key-counts.ts';

/** The rarest band whose words are neighbors. */
const RAREST_NEIGHBOR = 6;

/**
 * How many familiar words, by their ordinary reading, differ from these sounds
 * in one sound. Words of more than nine sounds, which have next to no
 * neighbors, count none.
 */
export function realNeighbors(sounds: readonly Phoneme[], lexicon: Lexicon): number {
  const { whole, blanked, shortened, counted } = patternsIn(lexicon);
  const codes = sounds.map(codeOf);
  if (codes.length > LONGEST) return 0;
  const own = keyOf(codes);
  const before = counted.get(own);
  if (before !== undefined) return before;
  const same = whole.of(own);
  let count = shortened.of(own);
  for (let at = 0; at < codes.length; at++) {
    count += blanked.of(keyOf(codes, at, BLANK)) - same;
    if (codes[at] !== codes[at - 1]) count += whole.of(keyOf(codes, at, NOTHING));
  }
  counted.set(own, count);
  return count;
}

/** Words and what is left of them, as numbers. */
interface Patterns {
  readonly whole: KeyCounts;
  readonly blanked: KeyCounts;
  readonly shortened: KeyCounts;
  /** The neighbors of rows of sounds that were asked for before: boards share most of theirs. */
  readonly counted: Map<number, number>;
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
    if (lexicon.band(index) > RAREST_NEIGHBOR) continue;
    const codes = soundsOfCards(lexicon.cardIds(index))?.map(codeOf);
    if (!codes || codes.length > LONGEST) continue;
    whole.push(keyOf(codes));
    for (let at = 0; at < codes.length; at++) {
      blanked.push(keyOf(codes, at, BLANK));
      if (codes[at] !== codes[at - 1]) shortened.push(keyOf(codes, at, NOTHING));
    }
  }
  return {
    whole: countKeys(whole),
    blanked: countKeys(blanked),
    shortened: countKeys(shortened),
    counted: new Map(),
  };
}
