import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { piecesOf } from '../boards/shapes/pieces.ts';
import type { CardId } from '../language/card-id.ts';
import type { Moment } from './moments.ts';
import { act, type Standing, standingAt } from './standing.ts';

const words = ['b a t', 's a t', 's i t', 'b i t', 'b a n', 's i n', 'm a t'];
const moments: readonly Moment[] = words.map((word, place): Moment => {
  const sounds: Record<string, string> = {
    b: 'B',
    s: 'S',
    m: 'M',
    a: 'AE',
    i: 'IH',
    t: 'T',
    n: 'N',
  };
  const cards = word.split(' ').map((letter): CardId => `${letter}=${sounds[letter]}`);
  return {
    part: 'blending',
    place,
    flip: { cards, word: word.replaceAll(' ', ''), sounds: [], kind: 'nonsense' },
    pieces: piecesOf(cards),
  };
});
const manner = { moments, blending: 'whole' } as const;

function wordAt({ order, at }: Standing): string | undefined {
  return words[order[at] ?? -1];
}

describe('turning a card by touch', () => {
  it('brings the next flip that differs only there, and leaves the others as they were', () => {
    const vowel = act(standingAt(7), { turn: 1 }, manner);
    expect(wordAt(vowel)).toBe('b i t');
    expect(vowel.order).toEqual([0, 3, 1, 2, 4, 5, 6]);
    expect(wordAt(act(standingAt(7), { turn: 2 }, manner))).toBe('b a n');
    expect(wordAt(act(standingAt(7), { turn: 0 }, manner))).toBe('s a t');
  });

  it('changes nothing where no flip to come differs only there', () => {
    const last = standingAt(7, 5);
    expect(act(last, { turn: 1 }, manner)).toBe(last);
  });

  it('shows every word of the plan once, whichever cards are turned', () => {
    const turns = fc.array(fc.oneof(fc.constant('next' as const), fc.record({ turn: fc.nat(2) })), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(turns, (all) => {
        const standing = all.reduce<Standing>((now, what) => act(now, what, manner), standingAt(7));
        expect([...standing.order].sort()).toEqual([0, 1, 2, 3, 4, 5, 6]);
      }),
    );
  });

  it('opens the next card while some are still face down', () => {
    const sounds = { moments, blending: 'sounds' } as const;
    const opened = act(standingAt(7), { turn: 2 }, sounds);
    expect(opened).toMatchObject({ at: 0, shown: 2 });
  });
});
