import type { Phoneme } from '../../core/language/phonemes.ts';
import { codeOf, isVowelCode } from '../../core/words/screen-ear.ts';

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
 * How a word of several syllables is read off cards, one vowel at a time: a weak
 * vowel of a later syllable in full (mid·get with the e of get), the first vowel
 * short where the word has it long (dag·o; for severe rows also long for short a,
 * fa·git), or a last -er without its r. For the
 * whole word only.
 */
export function readOut(
  sounds: readonly Phoneme[],
  severe: boolean,
): readonly (readonly Phoneme[])[] {
  const vowels = sounds.flatMap((sound, at) => (isVowelCode(codeOf(sound)) ? [at] : []));
  if (vowels.length < 2) return [];
  return sounds.flatMap((sound, at) => {
    if (at === vowels[0] && vowels.length === 2) {
      if (severe && sound === 'AE') return [sounds.with(at, 'EY')];
      const short = closed[sound];
      return short ? [sounds.with(at, short)] : [];
    }
    if (sound === 'AX' && at > 1) return FULL_VOWELS.map((vowel) => sounds.with(at, vowel));
    if (sound === 'IH' && at > (vowels[0] as number) && sounds[at + 1] !== 'NG')
      return [sounds.with(at, 'EH')];
    const isLast = at === sounds.length - 1;
    return sound === 'ER' && at > 2 && isLast ? [sounds.with(at, 'AX')] : [];
  });
}

/** Short vowels of cards that running speech would weaken; short i and u are one with the schwa already. */
const FULL_VOWELS: readonly Phoneme[] = ['AA', 'AE', 'EH'];

/** The short vowel of a letter that says its name: on cards the syllable may be closed. */
const closed: Table<Phoneme> = { EY: 'AE', IY: 'EH', OW: 'AA' };

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
