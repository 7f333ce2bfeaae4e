import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PHONEMES, type Phoneme } from '../phonemes.ts';
import {
  ACCENT_HABITS,
  type AccentHabit,
  AMERICAN,
  makeAccent,
  parseAccent,
  withHabit,
} from './accent.ts';
import { alsoHeard } from './also-heard.ts';
import { mergeSounds, soundsHere } from './sounds-here.ts';

const sounds = (text: string) => text.split(' ') as Phoneme[];
const rows = fc.array(fc.constantFrom(...PHONEMES), { minLength: 1, maxLength: 6 });
const MERGERS = ACCENT_HABITS.filter((habit) => !/wh-apart|southern/.test(habit));
const accents = fc.subarray([...ACCENT_HABITS]).map(makeAccent);
const mergers = fc.subarray([...MERGERS]).map(makeAccent);

/** Pairs of words as the literature gives them (Wells 1982, from memory), alike with the habit and not without. */
const PAIRS: readonly (readonly [AccentHabit, string, string])[] = [
  ['cot-caught', 'K AA T', 'K AO T'],
  ['pin-pen', 'P IH N', 'P EH N'],
  ['pin-pen', 'HH IH M', 'HH EH M'],
  ['pull-pool', 'P UH L', 'P UW L'],
  ['fill-feel', 'F IH L', 'F IY L'],
  ['th-fronted', 'TH R IY', 'F R IY'],
  ['th-fronted', 'B R AH DH ER', 'B R AH V ER'],
  ['r-dropped', 'S AO S', 'S AO R S'],
  ['southern-british', 'K AO T', 'K AO R T'],
  ['southern-british', 'P AE N D AX', 'P AE N D ER'],
];

/** Pairs that stay apart with the habit. */
const APART: readonly (readonly [AccentHabit, string, string])[] = [
  ['pin-pen', 'P IH T', 'P EH T'],
  ['pull-pool', 'F UH T', 'F UW T'],
  ['cot-caught', 'S T AA R', 'S T AO R'],
  ['r-dropped', 'K AE T', 'K AE R T AX'],
  ['southern-british', 'K AA T', 'K AO T'],
  ['southern-british', 'K AA T', 'K AA R T'],
];

describe('the sounds of a class', () => {
  it.each(PAIRS)('with %s makes %s and %s one', (habit, one, other) => {
    const said = (text: string, accent: readonly AccentHabit[]) =>
      soundsHere(sounds(text), accent).join(' ');
    expect(said(one, [habit])).toBe(said(other, [habit]));
    expect(said(one, AMERICAN)).not.toBe(said(other, AMERICAN));
  });

  it.each(APART)('with %s keeps %s and %s apart', (habit, one, other) => {
    expect(soundsHere(sounds(one), [habit])).not.toEqual(soundsHere(sounds(other), [habit]));
  });

  it('are the listed ones in American', () => {
    fc.assert(
      fc.property(rows, (row) => {
        expect(soundsHere(row, AMERICAN)).toBe(row);
        expect(alsoHeard(row, AMERICAN)).toEqual([row]);
      }),
      { numRuns: 50 },
    );
  });

  it('merged twice are what they are merged once', () => {
    fc.assert(
      fc.property(rows, mergers, (row, accent) => {
        const once = mergeSounds(row, accent);
        expect(mergeSounds(once, accent)).toEqual(once);
      }),
      { numRuns: 300 },
    );
  });

  it('of all that they may have been heard from are the same, and those are all (naive: every row)', () => {
    const small = PHONEMES.filter((sound) => /^(AA|AO|UH|UW|IH|EH|R|L|N|F|TH)$/.test(sound));
    const all = small.flatMap((one) =>
      small.flatMap((two) => [[one, two], ...small.map((three) => [one, two, three] as Phoneme[])]),
    );
    fc.assert(
      fc.property(fc.constantFrom(...all), mergers, (row, accent) => {
        const key = soundsHere(row, accent).join(' ');
        const ways = alsoHeard(row, accent).map((way) => way.join(' '));
        const alike = all
          .filter((other) => soundsHere(other, accent).join(' ') === key)
          .map((other) => other.join(' '))
          .filter((text) => !/R R|R [LNFT]/.test(text) || ways.includes(text));
        expect(ways).toEqual(expect.arrayContaining(alike.filter((text) => isSpeech(text))));
        for (const way of alsoHeard(row, accent)) {
          expect(soundsHere(way, accent).join(' ')).toBe(key);
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** English has an r before a consonant only after a vowel. */
function isSpeech(text: string): boolean {
  return !/(^| )(R|L|N|F|TH) R( |$)/.test(text);
}

describe('an accent', () => {
  it('is read back from its names, in one order, none twice', () => {
    fc.assert(
      fc.property(accents, (accent) => {
        expect(parseAccent(accent.join(','))).toEqual(accent);
        expect(makeAccent([...accent].reverse())).toEqual(accent);
      }),
      { numRuns: 50 },
    );
    expect(parseAccent('american')).toEqual(AMERICAN);
    expect(parseAccent('')).toEqual(AMERICAN);
    expect(parseAccent('pin-pen, martian')).toBeNull();
  });

  it('of southern Britain has no American merger beside it', () => {
    expect(withHabit(['cot-caught', 'wh-apart'], 'southern-british', true)).toEqual([
      'wh-apart',
      'southern-british',
    ]);
  });
});
