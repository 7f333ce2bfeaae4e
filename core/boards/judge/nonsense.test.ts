import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { readFixture } from '../../../test/fixture.ts';
import { beginnings, endings, tableOf, vowels } from '../../../test/run-boards.ts';
import type { Phoneme } from '../../language/phonemes.ts';
import { makeRandom, shuffled } from '../../random.ts';
import { phonotacticScore } from '../../words/phonotactics.ts';
import { flipOf, makeRun } from '../runs/run.ts';
import { realNeighbors } from './neighbors.ts';
import { easeAmong, easyToHard, isAwkward, type SaidRow } from './nonsense.ts';
import { outcomeAt, type WordTable } from './word-table.ts';

function said(text: string): { readonly word: string; readonly sounds: readonly Phoneme[] } {
  return { word: text, sounds: text.split(' ') as Phoneme[] };
}

describe('how easy nonsense is', () => {
  test('grows with both measures: a word above another by both is the easier', () => {
    const table = tableOf([beginnings, vowels.slice(0, 3), endings.slice(0, 8)]);
    const words = nonsenseOf(table).map((at) => flipOf(table, at));
    const ease = easeAmong(words, builtLexicon);
    const measured = words.map(({ sounds }, at) => ({
      length: sounds.length,
      likely: phonotacticScore(sounds, builtLexicon),
      near: realNeighbors(sounds, builtLexicon),
      ease: ease[at] as number,
    }));
    for (const one of measured) {
      expect(one.ease).toBeGreaterThanOrEqual(0);
      expect(one.ease).toBeLessThanOrEqual(1);
      for (const other of measured) {
        if (one.length !== other.length || one.likely <= other.likely || one.near <= other.near) {
          continue;
        }
        expect(one.ease).toBeGreaterThan(other.ease);
      }
    }
  });

  test('is the mean of two ranks among words of as many sounds, each counted out one by one', () => {
    const table = tableOf([beginnings.slice(0, 6), vowels.slice(0, 3), endings.slice(0, 6)]);
    const words = nonsenseOf(table).map((at) => flipOf(table, at));
    const rank = (word: SaidRow, measure: (of: SaidRow) => number) => {
      const alike = words.filter(({ sounds }) => sounds.length === word.sounds.length);
      if (alike.length === 1) return 0.5;
      const lower = alike.filter((other) => measure(other) < measure(word)).length;
      const equal = alike.filter((other) => measure(other) === measure(word)).length;
      return (lower + (equal - 1) / 2) / (alike.length - 1);
    };
    const ease = easeAmong(words, builtLexicon);
    words.forEach((word, at) => {
      const likely = rank(word, ({ sounds }) => phonotacticScore(sounds, builtLexicon));
      const near = rank(word, ({ sounds }) => realNeighbors(sounds, builtLexicon));
      expect(ease[at]).toBeCloseTo((likely + near) / 2, 10);
    });
  });

  test('does not depend on the order of the words', () => {
    const words = ['D AE T', 'Z OY V', 'M IH B', 'S T R IH M P', 'F EH N'].map(said);
    const ease = easeAmong(words, builtLexicon);
    const turned = easeAmong(words.toReversed(), builtLexicon);
    expect(turned.toReversed()).toEqual(ease);
  });

  test('is the same for what sounds the same, and a half for a word alone', () => {
    expect(easeAmong([said('D AE T')], builtLexicon)).toEqual([0.5]);
    const [one, other] = easeAmong(['D AE T', 'D AE T', 'Z OY V'].map(said), builtLexicon);
    expect(one).toBe(other);
  });
});

test('nonsense goes from short words with likely sounds and many real neighbors to others', () => {
  const words = ['Z OY V', 'S T R IH M P', 'D AE T'].map(said);
  expect(easyToHard(words, builtLexicon).map(({ word }) => word)).toEqual([
    'D AE T',
    'Z OY V',
    'S T R IH M P',
  ]);
});

// Vitevitch & Luce 1998 repeat their nonsense of likely sounds faster. In the published example of
// their measure *blick* is the likely one; that *bnick* is none is Chomsky & Halle 1965.
test('what no English word begins with is awkward, the published blick is not', () => {
  const rows = readFixture('phonotactic-probability.tsv').map(({ item }) => item);
  expect(rows).toContain('blick');
  expect(isAwkward(said('B L IH K'), builtLexicon)).toBe(false);
  expect(isAwkward(said('B N IH K'), builtLexicon)).toBe(true);
  for (const word of ['cat', 'stop', 'string', 'rain', 'rabbit']) {
    const [reading] = builtLexicon.readings(builtLexicon.indexOf(word));
    expect(isAwkward({ sounds: reading?.sounds ?? [] }, builtLexicon)).toBe(false);
  }
});

describe('the nonsense of a run', () => {
  const table = tableOf([beginnings.slice(0, 12), vowels, endings.slice(0, 12)]);
  const all = nonsenseOf(table);
  const ease = new Map<string, number>();
  const flips = all.map((at) => flipOf(table, at));
  easeAmong(flips, builtLexicon).forEach((rank, at) => {
    ease.set((flips[at] as (typeof flips)[number]).word, rank);
  });
  const meanEase = (words: readonly string[]): number =>
    words.reduce((sum, word) => sum + (ease.get(word) ?? Number.NaN), 0) / words.length;
  const runOf = (seed: number): readonly string[] =>
    makeRun(table, { flips: 30, realShare: 0.5, seed }, builtLexicon)
      .flips.filter(({ kind }) => kind === 'nonsense')
      .map(({ word }) => word);

  test('is easier to say than as many drawn at random', () => {
    const seeds = Array.from({ length: 40 }, (_, seed) => seed);
    const drawn = seeds.map((seed) =>
      meanEase(shuffled([...ease.keys()], makeRandom(seed)).slice(0, 15)),
    );
    const chosen = seeds.map((seed) => meanEase(runOf(seed)));
    const mean = (values: readonly number[]) =>
      values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(mean(chosen)).toBeGreaterThan(mean(drawn) + 0.05);
  });

  test('is not always the same: words of the lower half come too', () => {
    const seen = new Set<string>();
    for (let seed = 0; seed < 60; seed++) for (const word of runOf(seed)) seen.add(word);
    const lower = [...seen].filter((word) => (ease.get(word) as number) < 0.5).length;
    expect(seen.size).toBeGreaterThan(ease.size / 3);
    expect(lower / seen.size).toBeGreaterThan(0.2);
  });

  test('is not awkward where the board has enough of other nonsense', () => {
    const sounds = new Map(flips.map((flip) => [flip.word, flip.sounds]));
    for (let seed = 0; seed < 60; seed++) {
      for (const word of runOf(seed)) {
        expect(isAwkward({ sounds: sounds.get(word) ?? [] }, builtLexicon)).toBe(false);
      }
    }
  });
});

function nonsenseOf(table: WordTable): readonly number[] {
  return [...table.words.keys()].filter((at) => outcomeAt(table, at) === 'nonsense');
}
