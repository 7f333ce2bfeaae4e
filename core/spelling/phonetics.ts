/**
 * How far apart two sounds are in the mouth. Consonants differ by voice, place and manner, vowels by
 * height, backness and glide: the features of any chart of the International Phonetic Alphabet. That
 * nearness in the mouth is what beginning spellers go by was shown for vowels by Read (Pre-school
 * children's knowledge of English phonology, 1971; Children's categorization of speech sounds in
 * English, 1975) and for consonants by Treiman (Beginning to Spell, 1993), both from memory. The weights
 * are set by hand: each feature alone is a small step, all together a whole one.
 */
import { isVowelPhoneme, type Phoneme, type VowelPhoneme } from '../language/phonemes.ts';

/** From 0 (one sound) to 1 (nothing in common); a vowel and a consonant have nothing in common. */
function apart(one: Phoneme, other: Phoneme): number {
  if (one === other) return 0;
  if (isVowelPhoneme(one)) return isVowelPhoneme(other) ? vowelsApart(one, other) : 1;
  return isVowelPhoneme(other) ? 1 : consonantsApart(one as Consonant, other as Consonant);
}

/** The least change that makes one row of sounds the other: the mean over the longer, from 0 to 1. */
export function soundsApart(one: readonly Phoneme[], other: readonly Phoneme[]): number {
  const width = other.length + 1;
  const costs = new Array<number>((one.length + 1) * width).fill(0);
  for (let row = 0; row <= one.length; row++) {
    for (let column = 0; column < width; column++) {
      if (row === 0 || column === 0) {
        costs[row * width + column] = row + column;
        continue;
      }
      const above = (costs[(row - 1) * width + column] as number) + 1;
      const before = (costs[row * width + column - 1] as number) + 1;
      const both =
        (costs[(row - 1) * width + column - 1] as number) +
        apart(one[row - 1] as Phoneme, other[column - 1] as Phoneme);
      costs[row * width + column] = Math.min(above, before, both);
    }
  }
  return (costs.at(-1) as number) / Math.max(1, one.length, other.length);
}

/** In what one sound is another: the one feature in which they differ, or several. */
export type Difference = 'voice' | 'place' | 'manner' | 'next-door-vowel' | 'several';

/** In what two different sounds differ. */
export function differenceOf(one: Phoneme, other: Phoneme): Difference {
  if (isVowelPhoneme(one) || isVowelPhoneme(other)) {
    return apart(one, other) <= NEXT_DOOR ? 'next-door-vowel' : 'several';
  }
  const [left, right] = [consonants[one as Consonant], consonants[other as Consonant]];
  const differing = (['voice', 'place', 'manner'] as const).filter(
    (feature) => left[feature] !== right[feature],
  );
  return differing.length === 1 ? (differing[0] as Difference) : 'several';
}

/** Vowels no farther apart than this lie next to each other: bid, bed, bad. */
const NEXT_DOOR = 0.3;

type Consonant = Exclude<Phoneme, VowelPhoneme>;
type Manner = 'stop' | 'affricate' | 'fricative' | 'nasal' | 'liquid' | 'glide';
interface ConsonantFeatures {
  readonly voice: 0 | 1;
  /** From the lips (0) to the glottis (7). */
  readonly place: number;
  readonly manner: Manner;
}

const of = (voice: 0 | 1, place: number, manner: Manner): ConsonantFeatures => ({
  voice,
  place,
  manner,
});

const consonants: Readonly<Record<Consonant, ConsonantFeatures>> = {
  B: of(1, 0, 'stop'),
  CH: of(0, 4, 'affricate'),
  D: of(1, 3, 'stop'),
  DH: of(1, 2, 'fricative'),
  F: of(0, 1, 'fricative'),
  G: of(1, 6, 'stop'),
  HH: of(0, 7, 'fricative'),
  JH: of(1, 4, 'affricate'),
  K: of(0, 6, 'stop'),
  L: of(1, 3, 'liquid'),
  M: of(1, 0, 'nasal'),
  N: of(1, 3, 'nasal'),
  NG: of(1, 6, 'nasal'),
  P: of(0, 0, 'stop'),
  R: of(1, 4, 'liquid'),
  S: of(0, 3, 'fricative'),
  SH: of(0, 4, 'fricative'),
  T: of(0, 3, 'stop'),
  TH: of(0, 2, 'fricative'),
  V: of(1, 1, 'fricative'),
  W: of(1, 0, 'glide'),
  Y: of(1, 5, 'glide'),
  Z: of(1, 3, 'fricative'),
  ZH: of(1, 4, 'fricative'),
};

/** Manners that shade into each other; any other two are a whole step apart. */
const mannersApart: Readonly<Record<string, number>> = {
  'affricate stop': 0.5,
  'affricate fricative': 0.5,
  'fricative stop': 0.7,
  'glide liquid': 0.5,
  'nasal stop': 0.7,
};

function consonantsApart(one: Consonant, other: Consonant): number {
  const [left, right] = [consonants[one], consonants[other]];
  const voice = left.voice === right.voice ? 0 : 0.2;
  const place = 0.35 * (Math.abs(left.place - right.place) / 7);
  const manners = [left.manner, right.manner].sort().join(' ');
  const manner = left.manner === right.manner ? 0 : 0.45 * (mannersApart[manners] ?? 1);
  return voice + place + manner;
}

interface VowelFeatures {
  /** From high (0) to low (2). */
  readonly height: number;
  /** From front (0) to back (1). */
  readonly back: number;
  /** Where the vowel moves to, if it does. */
  readonly glide: 'front' | 'back' | 'r' | null;
}

const vowels: Readonly<Record<VowelPhoneme, VowelFeatures>> = {
  AA: { height: 2, back: 0.8, glide: null },
  AE: { height: 2, back: 0.2, glide: null },
  AH: { height: 1.5, back: 0.6, glide: null },
  AO: { height: 1.5, back: 1, glide: null },
  AW: { height: 2, back: 0.5, glide: 'back' },
  AX: { height: 1.2, back: 0.5, glide: null },
  AY: { height: 2, back: 0.5, glide: 'front' },
  EH: { height: 1.4, back: 0.1, glide: null },
  ER: { height: 1.2, back: 0.5, glide: 'r' },
  EY: { height: 1, back: 0, glide: 'front' },
  IH: { height: 0.6, back: 0.1, glide: null },
  IY: { height: 0, back: 0, glide: null },
  OW: { height: 1, back: 1, glide: 'back' },
  OY: { height: 1.5, back: 1, glide: 'front' },
  UH: { height: 0.6, back: 0.9, glide: null },
  UW: { height: 0, back: 1, glide: null },
};

function vowelsApart(one: VowelPhoneme, other: VowelPhoneme): number {
  const [left, right] = [vowels[one], vowels[other]];
  const height = 0.5 * (Math.abs(left.height - right.height) / 2);
  const back = 0.3 * Math.abs(left.back - right.back);
  const glide = left.glide === right.glide ? 0 : 0.2;
  return Math.max(0.05, height + back + glide);
}
