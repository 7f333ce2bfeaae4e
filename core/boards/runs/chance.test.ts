import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { beginnings, endings, tableOf, turnsOf, vowels } from '../../../test/run-boards.ts';
import type { WordTable } from '../judge/word-table.ts';
import { makeRun } from './run.ts';

const table = tableOf([beginnings.slice(0, 9), vowels.slice(0, 5), endings.slice(0, 9)]);
const turns = Array.from({ length: 100 }, (_, seed) =>
  turnsOf(makeRun(table, { flips: 30, realShare: 0.5, seed }, builtLexicon).flips),
);

/** Which pile followed a row of piles, how often. */
function followers(length: number): ReadonlyMap<string, readonly number[]> {
  const follows = new Map<string, number[]>();
  for (const run of turns) {
    run.slice(length).forEach((pile, at) => {
      const before = run.slice(at, at + length).join(' ');
      const counts = follows.get(before) ?? [0, 0, 0];
      counts[pile] = (counts[pile] as number) + 1;
      follows.set(before, counts);
    });
  }
  return follows;
}

describe('which pile is turned next', () => {
  test('can be any, whichever was turned before', () => {
    const follows = followers(1);
    expect(follows.size).toBe(3);
    for (const counts of follows.values()) {
      const all = counts.reduce((sum, count) => sum + count, 0);
      for (const count of counts) {
        expect(count / all).toBeGreaterThan(0.02);
        expect(count / all).toBeLessThan(2 / 3);
      }
    }
  });

  test('is guessed right hardly more than half of the time by who knows the last two', () => {
    let right = 0;
    let all = 0;
    for (const counts of followers(2).values()) {
      right += Math.max(...counts);
      all += counts.reduce((sum, count) => sum + count, 0);
    }
    expect(right / all).toBeLessThan(0.6);
  });

  test('does not come round again after any number of flips', () => {
    for (let period = 1; period <= 8; period++) {
      let again = 0;
      let all = 0;
      for (const run of turns) {
        run.slice(period).forEach((pile, at) => {
          all++;
          if (pile === run[at]) again++;
        });
        const same = run.slice(period).filter((pile, at) => pile === run[at]).length;
        expect(same).toBeLessThan(run.length - period);
      }
      // A third by chance.
      expect(again / all).toBeLessThan(0.5);
    }
  });

  test('is never the same four times in a row on a board with room', () => {
    for (const run of turns) expect(run.join('')).not.toMatch(/(\d)\1{3}/);
  });
});

describe('whether the next word is real', () => {
  const runs = (board: WordTable) =>
    Array.from(
      { length: 60 },
      (_, seed) => makeRun(board, { flips: 30, realShare: 0.5, seed }, builtLexicon).flips,
    );

  test('cannot be told from the word before', () => {
    const pairs = runs(table).flatMap((flips) =>
      flips.slice(1).map(({ kind }, at) => kind !== flips[at]?.kind),
    );
    const changes = pairs.filter(Boolean).length / pairs.length;
    expect(changes).toBeGreaterThan(0.35);
    expect(changes).toBeLessThan(0.65);
  });

  test('cannot be told from the place, even where nearly all real words of the board are needed', () => {
    const scarce = tableOf([
      beginnings.slice(0, 8),
      vowels.slice(1, 6),
      ['b=B', 'g=G', 'm=M', 'sh=SH'],
    ]);
    for (const board of [table, scarce]) {
      const all = runs(board).map((flips) => flips.map(({ kind }) => kind === 'real'));
      const first = all.flatMap((kinds) => kinds.slice(0, 15)).filter(Boolean).length;
      const last = all.flatMap((kinds) => kinds.slice(15)).filter(Boolean).length;
      expect(first / (first + last)).toBeGreaterThan(0.42);
      expect(first / (first + last)).toBeLessThan(0.58);
    }
  });
});
