import { isVowelPhoneme, type Phoneme } from '../language/phonemes.ts';

/**
 * Parts of words that a child hears as what they are, and letters' names: shown
 * as nonsense they would not be nonsense. From memory. Sorted.
 */
const PARTS: ReadonlySet<string> = new Set(
  `anti be bi ce co com con de dis ef el em en es ess ex fe ge gy im ing ir ist ite ize ke ko le li
   lo ly ma mam mid mis mo ne non per poly pre pro re se sub sup te tele tion tri ty ul un ve vi ze`
    .split(/\s+/)
    .filter(Boolean),
);

/** Letters' names as they are said. */
const LETTER_NAMES: ReadonlySet<string> = new Set([
  'EY',
  'B IY',
  'S IY',
  'D IY',
  'IY',
  'EH F',
  'JH IY',
  'EY CH',
  'AY',
  'JH EY',
  'K EY',
  'EH L',
  'EH M',
  'EH N',
  'OW',
  'P IY',
  'K Y UW',
  'AA R',
  'EH S',
  'T IY',
  'Y UW',
  'V IY',
  'EH K S',
  'W AY',
  'Z IY',
]);

/** Whether a spelling is a part of longer words (re, pre, un), or is said as a letter's name. */
export function isSpokenPart(word: string, sounds: readonly Phoneme[]): boolean {
  return PARTS.has(word) || (sounds.length <= 3 && LETTER_NAMES.has(sounds.join(' ')));
}

/**
 * Whether only the vowel parts a syllable from a word that is never shown to a
 * class: a child who misreads the vowel would say it. The consonants alone are
 * kept here.
 */
export function isNearSevere(sounds: readonly Phoneme[]): boolean {
  if (sounds.length > 5) return false;
  return SEVERE_FRAMES.has(sounds.map((sound) => (isVowelPhoneme(sound) ? '_' : sound)).join(' '));
}

const SEVERE_FRAMES: ReadonlySet<string> = new Set([
  'B _ CH',
  'D _ K',
  'F _ G',
  'F _ K',
  'HH _ R',
  'JH _ Z',
  'K W _ F',
  'K _ K',
  'K _ K S',
  'K _ M',
  'K _ N T',
  'N _ G',
  'S _ K S',
  'S L _ T',
  'SH _ T',
  'SH _ T S',
  'T _ T',
  'T _ T S',
  'T W _ T',
  'W _ NG K',
]);
