import { PHONEMES, type Phoneme } from '../language/phonemes.ts';

/**
 * How a class hears sounds. Two words that a class would hear as one become
 * the same codes, so that a screen can look them up instead of comparing. One
 * pass over the sounds, no allocation; at most 60 sounds are read.
 *
 * Both forms merge what American, British, Irish and Australian classrooms do
 * not reliably tell apart: cot/caught, which/witch, the vowels before r, tune
 * with or without its y, doubled sounds at a card's edge (Wells, *Accents of
 * English*, 1982, and Labov, Ash & Boberg, *Atlas of North American English*,
 * 2006, both from memory). `plain` also makes the schwa, short u and weak short
 * i one vowel, as they are in running speech; `full` keeps them apart, for the
 * halves of longer words. Mergers that only matter for graver words (pin/pen, f
 * for th, a voiceless last sound) are stored with those words as their slips.
 */
export interface Heard {
  /** Writes codes of `sounds` to `out` (room for 64); returns how many. */
  plain(sounds: readonly Phoneme[], out: Uint8Array): number;
  full(sounds: readonly Phoneme[], out: Uint8Array): number;
}

const codeByPhoneme: ReadonlyMap<string, number> = new Map(
  PHONEMES.map((phoneme, index) => [phoneme, index + 1]),
);

/** The code of a phoneme: 1 to 40; vowels are 1 to 16. */
export function codeOf(phoneme: Phoneme): number {
  return codeByPhoneme.get(phoneme) as number;
}

/** Whether a code is a vowel's. */
export function isVowelCode(code: number): boolean {
  return code > 0 && code <= VOWELS;
}

const LONGEST = 60;
const VOWELS = 16;
const AA = codeOf('AA');
const AE = codeOf('AE');
const AH = codeOf('AH');
const AO = codeOf('AO');
const AW = codeOf('AW');
const AX = codeOf('AX');
const AY = codeOf('AY');
const EH = codeOf('EH');
const ER = codeOf('ER');
const EY = codeOf('EY');
const IH = codeOf('IH');
const IY = codeOf('IY');
const OW = codeOf('OW');
const UH = codeOf('UH');
const UW = codeOf('UW');
const D = codeOf('D');
const T = codeOf('T');
const CH = codeOf('CH');
const JH = codeOf('JH');
const HH = codeOf('HH');
const W = codeOf('W');
const R = codeOf('R');
const Y = codeOf('Y');
const N = codeOf('N');
const NG = codeOf('NG');
const K = codeOf('K');
const G = codeOf('G');

/** The vowel that a vowel becomes before r; 0 keeps it. ER swallows the r. */
const beforeR = tableOf({
  [AO]: AO,
  [OW]: AO,
  [EY]: EH,
  [AE]: EH,
  [EH]: EH,
  [IY]: IH,
  [IH]: IH,
  [UW]: UH,
  [UH]: UH,
  [AH]: ER,
  [AX]: ER,
  [ER]: ER,
});

/** After these a y before oo comes and goes with the speaker. */
const dropsY = setOf(['T', 'D', 'N', 'L', 'S', 'Z', 'TH']);

/** Whether a code is a voiceless consonant's. */
export const isVoiceless: (code: number) => boolean = (() => {
  const set = setOf(['P', 'T', 'K', 'F', 'S', 'SH', 'CH', 'TH', 'HH']);
  return (code: number) => set[code] === 1;
})();

export const heard: Heard = {
  plain: (sounds, out) => listen(sounds, out, true),
  full: (sounds, out) => listen(sounds, out, false),
};

function listen(sounds: readonly Phoneme[], out: Uint8Array, loose: boolean): number {
  const size = Math.min(sounds.length, LONGEST);
  let count = 0;
  let vowels = 0;
  let next = size > 0 ? codeOf(sounds[0] as Phoneme) : 0;
  for (let i = 0; i < size; i++) {
    const code = next;
    next = i + 1 < size ? codeOf(sounds[i + 1] as Phoneme) : 0;
    const last = count > 0 ? (out[count - 1] as number) : 0;
    if (code > VOWELS) {
      if (code === HH && next === W) continue;
      if ((code === T && next === CH) || (code === D && next === JH)) continue;
      if (code === Y && dropsY[last] === 1 && (next === UW || next === UH)) continue;
      const kept = code === N && (next === K || next === G) ? NG : code;
      if (kept === last || (kept === G && last === NG && isVowelCode(next))) continue;
      out[count++] = kept;
      continue;
    }
    vowels += 1;
    if (next === R && beforeR[code] !== 0) {
      out[count++] = beforeR[code] as number;
      if (beforeR[code] === ER) next = skip(sounds, ++i, size);
    } else if (next === R && (code === AY || code === AW)) {
      out[count++] = code;
      out[count++] = ER;
      next = skip(sounds, ++i, size);
    } else out[count++] = loose ? looseVowel(code, next, vowels > 1) : code === AO ? AA : code;
  }
  return count;
}

/** The code after an r that a vowel has swallowed. */
function skip(sounds: readonly Phoneme[], at: number, size: number): number {
  return at + 1 < size ? codeOf(sounds[at + 1] as Phoneme) : 0;
}

/** A vowel that no r follows, as running speech has it. */
function looseVowel(code: number, next: number, later: boolean): number {
  if (code === AO) return AA;
  if (code === AX || (code === IH && later && next !== NG)) return AH;
  return code === EH && later && next === N ? AH : code;
}

function tableOf(pairs: Readonly<Record<number, number>>): Uint8Array {
  const table = new Uint8Array(64);
  for (const [code, value] of Object.entries(pairs)) table[Number(code)] = value;
  return table;
}

function setOf(phonemes: readonly Phoneme[]): Uint8Array {
  const table = new Uint8Array(64);
  for (const phoneme of phonemes) table[codeOf(phoneme)] = 1;
  return table;
}
