import type { Phoneme } from '../../core/language/phonemes.ts';

/**
 * What a severe row or a slur may be heard in: its sounds one slip away. Both
 * are heard where pin and pen are one (short e and i before n and m). Severe
 * rows are heard besides through one of these: f, v and th in place of each
 * other; the last consonant voiced or voiceless; short oo for short u and back.
 * Two slips at once are not heard, or *vack* would stop.
 */
export function slipsOf(
  sounds: readonly Phoneme[],
  grave: { readonly severe: boolean; readonly slur: boolean },
): readonly (readonly Phoneme[])[] {
  const slips: Phoneme[][] = [];
  const swap = (at: number, heardAs: Phoneme) => slips.push(sounds.with(at, heardAs));
  sounds.forEach((sound, at) => {
    const next = sounds[at + 1];
    if ((grave.severe || grave.slur) && (next === 'N' || next === 'M')) {
      if (sound === 'EH') swap(at, 'IH');
      if (sound === 'IH') swap(at, 'EH');
    }
    if (!grave.severe) return;
    for (const heardAs of fronted[sound] ?? []) swap(at, heardAs);
    if (sound === 'UH' && next !== 'R') swap(at, 'AH');
    if (sound === 'AH' && next !== undefined && next !== 'R') swap(at, 'UH');
    const voiced = voicing[sound];
    if (at === sounds.length - 1 && voiced) swap(at, voiced);
  });
  return slips;
}

/**
 * How a word of several syllables is read off cards: one weak vowel of a later
 * syllable in full, or a last -er without its r. For the whole word only.
 */
export function readOut(sounds: readonly Phoneme[]): readonly (readonly Phoneme[])[] {
  return sounds.flatMap((sound, at) => {
    if (sound === 'AX' && at > 1) return FULL_VOWELS.map((vowel) => sounds.with(at, vowel));
    const isLast = at === sounds.length - 1;
    return sound === 'ER' && at > 2 && isLast ? [sounds.with(at, 'AX')] : [];
  });
}

/** Short vowels of cards that running speech would weaken; short i and u are one with the schwa already. */
const FULL_VOWELS: readonly Phoneme[] = ['AA', 'AE', 'EH'];

type Table<Value> = Readonly<Partial<Record<Phoneme, Value>>>;

const fronted: Table<readonly Phoneme[]> = { F: ['TH', 'V'], V: ['F', 'DH'], TH: ['F'], DH: ['V'] };

const pairs: readonly (readonly [Phoneme, Phoneme])[] = [
  ['B', 'P'],
  ['D', 'T'],
  ['G', 'K'],
  ['V', 'F'],
  ['Z', 'S'],
  ['JH', 'CH'],
  ['ZH', 'SH'],
];

const voicing: Table<Phoneme> = Object.fromEntries(
  pairs.flatMap(([voiced, voiceless]) => [
    [voiced, voiceless],
    [voiceless, voiced],
  ]),
);
