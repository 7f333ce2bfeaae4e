import { isVowelPhoneme, type Phoneme } from '../phonemes.ts';
import { type Accent, type AccentHabit, isBritish } from './accent.ts';
import type { HereSound } from './here-sound.ts';

/**
 * American sounds as they are heard in a class: of sounds that are alike there, always the same one. The
 * identity for American; applied twice it does what it does once. Where the letters matter (*wh*, *hot*
 * beside *father*), `saidHere` knows more.
 */
export function soundsHere(sounds: readonly Phoneme[], accent: Accent): readonly HereSound[] {
  if (accent.length === 0) return sounds;
  const merged = mergeSounds(sounds, accent);
  return isBritish(accent) ? britishSounds(merged) : merged;
}

/** The same with what makes two sounds one, all but southern British. */
export function mergeSounds(sounds: readonly Phoneme[], accent: Accent): readonly Phoneme[] {
  if (accent.length === 0) return sounds;
  let now = sounds;
  for (const habit of accent) {
    const merge = MERGERS[habit];
    if (merge) now = now.flatMap((sound, at) => merge(sound, now[at + 1], now[at - 1]));
  }
  return now;
}

/** A sound with what follows and what stands before it, as it is heard. */
type Merger = (
  sound: Phoneme,
  next: Phoneme | undefined,
  before: Phoneme | undefined,
) => Phoneme | readonly Phoneme[];

const NONE: readonly Phoneme[] = [];

const MERGERS: Readonly<Partial<Record<AccentHabit, Merger>>> = {
  'cot-caught': (sound, next) => (sound === 'AO' && next !== 'R' ? 'AA' : sound),
  'pin-pen': (sound, next) => (sound === 'EH' && (next === 'M' || next === 'N') ? 'IH' : sound),
  'pull-pool': (sound, next) => (sound === 'UW' && next === 'L' ? 'UH' : sound),
  'fill-feel': (sound, next) => (sound === 'IY' && next === 'L' ? 'IH' : sound),
  'th-fronted': (sound, _, before) =>
    sound === 'TH' ? 'F' : sound === 'DH' && before !== undefined ? 'V' : sound,
  'r-dropped': (sound, next, before) =>
    sound === 'R' && before !== undefined && !(next && isVowelPhoneme(next)) ? NONE : sound,
};

/**
 * The vowels of southern British by the sounds alone: *hot* rounded, the vowels before r single, r only
 * before a vowel. The AA of *father* cannot be told from that of *hot* here and counts as that of *hot*.
 */
export function britishSounds(sounds: readonly Phoneme[]): readonly HereSound[] {
  return sounds.flatMap((sound, at): HereSound | readonly HereSound[] => {
    const next = sounds[at + 1];
    const isKept = sounds[at + 2] !== undefined && isVowelPhoneme(sounds[at + 2] as Phoneme);
    if (isFadingEnd(sounds, at)) return 'AX';
    if (next === 'R') return (isKept ? OPEN_R[sound] : CLOSED_R[sound]) ?? sound;
    if (sound === 'R' && !(next && isVowelPhoneme(next)) && at > 0) return [];
    return sound === 'AA' ? 'OH' : sound;
  });
}

/** Whether a sound is the weak end of a longer word: *panda* and *pander*, *pandas* and *panders*. */
export function isFadingEnd(sounds: readonly Phoneme[], at: number): boolean {
  const sound = sounds[at];
  if (sound !== 'ER' && sound !== 'AX') return false;
  const after = sounds.slice(at + 1);
  const isEnd = after.length === 0 || (after.length === 1 && /^[ZD]$/.test(after[0] as string));
  return isEnd && sounds.slice(0, at).some(isVowelPhoneme);
}

/** A vowel whose r is not heard, and one whose r opens the next syllable. */
const CLOSED_R: Readonly<Partial<Record<Phoneme, HereSound>>> = {
  AA: 'AA',
  EH: 'EA',
  IH: 'IA',
  UH: 'AO',
};
const OPEN_R: Readonly<Partial<Record<Phoneme, HereSound>>> = { AA: 'OH', UH: 'AO' };
