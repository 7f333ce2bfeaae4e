/**
 * The sounds of English as the engine knows them: the 39 symbols of ARPABET as
 * the CMU Pronouncing Dictionary uses them, plus AX, ARPABET's own symbol for
 * the schwa. CMUdict writes the schwa AH0; telling it apart from the vowel of
 * *cup* matters here, because the one is taught with the letter u and the other
 * as a habit of unstressed syllables.
 */
export const VOWEL_PHONEMES = [
  'AA',
  'AE',
  'AH',
  'AO',
  'AW',
  'AX',
  'AY',
  'EH',
  'ER',
  'EY',
  'IH',
  'IY',
  'OW',
  'OY',
  'UH',
  'UW',
] as const;

/** The consonants of the same inventory. */
const CONSONANT_PHONEMES = [
  'B',
  'CH',
  'D',
  'DH',
  'F',
  'G',
  'HH',
  'JH',
  'K',
  'L',
  'M',
  'N',
  'NG',
  'P',
  'R',
  'S',
  'SH',
  'T',
  'TH',
  'V',
  'W',
  'Y',
  'Z',
  'ZH',
] as const;

/** Every phoneme, vowels first. The order is part of the word-list format. */
export const PHONEMES = [...VOWEL_PHONEMES, ...CONSONANT_PHONEMES] as const;

export type VowelPhoneme = (typeof VOWEL_PHONEMES)[number];
export type Phoneme = (typeof PHONEMES)[number];

const vowels: ReadonlySet<string> = new Set(VOWEL_PHONEMES);
const all: ReadonlySet<string> = new Set(PHONEMES);

/** Whether a phoneme is a vowel, and so the heart of a syllable. */
export function isVowelPhoneme(phoneme: Phoneme): phoneme is VowelPhoneme {
  return vowels.has(phoneme);
}

/** Whether a string is one of our phoneme symbols (no stress digit). */
export function isPhoneme(symbol: string): symbol is Phoneme {
  return all.has(symbol);
}

/**
 * Reads sounds as people write them: `"SH IH P"`, `"AH0 B AW1 T"`. Stress digits
 * are accepted and dropped; an unstressed AH (AH0) becomes the schwa AX.
 * Returns null when any symbol is unknown or there is none.
 */
export function parseSounds(text: string): readonly Phoneme[] | null {
  const symbols = text.trim().split(/\s+/).filter(Boolean);
  if (symbols.length === 0) return null;
  const sounds: Phoneme[] = [];
  for (const symbol of symbols) {
    const upper = symbol.toUpperCase();
    const bare = upper === 'AH0' ? 'AX' : upper.replace(/[0-2]$/, '');
    if (!isPhoneme(bare)) return null;
    sounds.push(bare);
  }
  return sounds;
}

/** Sounds as CMUdict writes them without stress: the schwa is AH again. */
export function makeSounds(sounds: readonly Phoneme[]): string {
  return sounds.map((sound) => (sound === 'AX' ? 'AH' : sound)).join(' ');
}

/** `[between slashes as a K–3 teacher writes it, IPA]` for each phoneme. */
const notation: Readonly<Record<Phoneme, readonly [string, string]>> = {
  AA: ['ŏ', 'ɑ'],
  AE: ['ă', 'æ'],
  AH: ['ŭ', 'ʌ'],
  AO: ['aw', 'ɔ'],
  AW: ['ow', 'aʊ'],
  AX: ['ə', 'ə'],
  AY: ['ī', 'aɪ'],
  EH: ['ĕ', 'ɛ'],
  ER: ['er', 'ɝ'],
  EY: ['ā', 'eɪ'],
  IH: ['ĭ', 'ɪ'],
  IY: ['ē', 'i'],
  OW: ['ō', 'oʊ'],
  OY: ['oy', 'ɔɪ'],
  UH: ['o͝o', 'ʊ'],
  UW: ['o͞o', 'u'],
  B: ['b', 'b'],
  CH: ['ch', 'tʃ'],
  D: ['d', 'd'],
  DH: ['th', 'ð'],
  F: ['f', 'f'],
  G: ['g', 'ɡ'],
  HH: ['h', 'h'],
  JH: ['j', 'dʒ'],
  K: ['k', 'k'],
  L: ['l', 'l'],
  M: ['m', 'm'],
  N: ['n', 'n'],
  NG: ['ng', 'ŋ'],
  P: ['p', 'p'],
  R: ['r', 'r'],
  S: ['s', 's'],
  SH: ['sh', 'ʃ'],
  T: ['t', 't'],
  TH: ['th', 'θ'],
  V: ['v', 'v'],
  W: ['w', 'w'],
  Y: ['y', 'j'],
  Z: ['z', 'z'],
  ZH: ['zh', 'ʒ'],
};

/** How sounds are written: as classrooms do, or in the International Phonetic Alphabet. */
export type Notation = 'classroom' | 'ipa';

/** A notation, or how a class of another accent writes sounds (`soundStyleFor`). */
export type SoundStyle = Notation | SoundWriter;

/** Writes sounds without the slashes; `grapheme` are their letters where these tell more. */
export interface SoundWriter {
  write(sounds: readonly Phoneme[], grapheme?: string): string;
}

/**
 * Sounds as a teacher writes them, `/sh/`, `/ā/`, `/kw/`, `/skror/`; or in IPA. The two
 * sounds of th share one notation in classrooms; the spoken keyword tells them apart.
 */
export function soundLabel(
  sounds: readonly Phoneme[],
  style: SoundStyle = 'classroom',
  grapheme?: string,
): string {
  if (sounds.length === 0) return 'silent';
  if (typeof style !== 'string') return `/${style.write(sounds, grapheme)}/`;
  if (style === 'ipa') return `/${sounds.map((sound) => notation[sound][1]).join('')}/`;
  let text = '';
  for (let at = 0; at < sounds.length; at += 1) {
    const pair = classroomPairs.get(`${sounds[at]} ${sounds[at + 1]}`);
    text += pair ?? notation[sounds[at]!][0];
    if (pair) at += 1;
  }
  return `/${text}/`;
}

/** Pairs of sounds that classrooms write as one sign. */
const classroomPairs: ReadonlyMap<string, string> = new Map([
  ['Y UW', 'ū'],
  ['AA R', 'ar'],
  ['AO R', 'or'],
  ['EH R', 'air'],
  ['IH R', 'ear'],
  ['AX L', 'ul'],
]);
