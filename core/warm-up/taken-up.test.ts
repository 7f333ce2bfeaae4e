import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eventId } from '../ids.ts';
import type { Moment } from './moments.ts';
import { act, type Standing, standingAt } from './standing.ts';
import { takenUpAt } from './taken-up.ts';

const visual = Array.from(
  { length: 6 },
  (_, place): Moment => ({ part: 'visual', place, id: `v${place}=V`, pieces: [] }),
);
const blending = Array.from(
  { length: 14 },
  (_, place): Moment => ({
    part: 'blending',
    place,
    flip: { cards: [`x${place}=X`], word: `x${place}`, sounds: [], kind: 'nonsense' },
    pieces: [],
  }),
);
const moments = [...visual, ...blending];
const manner = { moments, blending: 'whole' } as const;

/** Runs a warm-up as the log sees it: what came up, less what was skipped, and what was corrected. */
function run(acts: readonly ('next' | 'back' | 'skip' | 'correct all')[]) {
  let now = standingAt(moments.length);
  let at = 1;
  const happening = (number: number) => {
    const { part, place } = moments[number] as Moment;
    return { id: eventId(`event ${at}`), at: at++, part, place };
  };
  let shown = [happening(0)];
  const corrections: ReturnType<typeof happening>[] = [];
  for (const what of acts) {
    const before = now;
    const left = before.order[before.at];
    if (left === undefined) break;
    if (what === 'correct all') {
      now = act(now, 'correct', manner);
      while (now.turn !== null) now = act(now, 'correct', manner);
      corrections.push(happening(left));
    } else now = act(now, what, manner);
    const arrived = now.order[now.at];
    if (now.at === before.at || arrived === undefined) continue;
    if (what === 'skip') {
      const moment = moments[left] as Moment;
      const gone = shown.findLast(
        ({ part, place }) => part === moment.part && place === moment.place,
      );
      shown = shown.filter((event) => event !== gone);
    }
    shown.push(happening(arrived));
  }
  return { now, record: { shown, corrections } };
}

const momentOf = ({ order, at }: Standing) => order[at];
const ahead = ({ order, at }: Standing) => order.slice(at + 1);

describe('a warm-up that is taken up again', () => {
  it('stands at the first card when nothing came up', () => {
    expect(takenUpAt({ shown: [], corrections: [] }, moments)).toEqual(standingAt(moments.length));
  });

  it('stands where it stood, with the same to come, after going on, back and over some', () => {
    const walk = fc.array(fc.constantFrom('next', 'next', 'next', 'back'), { maxLength: 24 });
    fc.assert(
      fc.property(walk, (acts) => {
        const { now, record } = run(acts as ('next' | 'back')[]);
        if (momentOf(now) === undefined) return;
        const again = takenUpAt(record, moments);
        expect(momentOf(again)).toBe(momentOf(now));
        expect(ahead(again)).toEqual(ahead(now));
      }),
    );
  });

  it('counts what was passed over as skipped', () => {
    const { record } = run(['next', 'skip', 'skip', 'next']);
    const again = takenUpAt(record, moments);
    expect(momentOf(again)).toBe(4);
    expect(again.skipped).toEqual([1, 2]);
  });

  it('still brings back a word that was corrected, and not one that has come again', () => {
    const waits = run(['next', 'next', 'correct all', 'next', 'next']);
    expect(ahead(takenUpAt(waits.record, moments))).toEqual(ahead(waits.now));
    const came = run(['next', 'next', 'correct all', 'next', 'next', 'next', 'next']);
    expect(momentOf(came.now)).toBe(2);
    const again = takenUpAt(came.record, moments);
    expect(momentOf(again)).toBe(2);
    expect(ahead(again)).toEqual(ahead(came.now));
  });

  it('goes on with the words that were left when a card was turned to one far ahead', () => {
    const seen = [6, 7, 15, 8].map((number, at) => {
      const { part, place } = moments[number] as Moment;
      return { id: eventId(`event ${at}`), at, part, place };
    });
    const again = takenUpAt({ shown: seen, corrections: [] }, moments);
    expect(momentOf(again)).toBe(8);
    expect(ahead(again)).toEqual([9, 10, 11, 12, 13, 14, 16, 17, 18, 19]);
  });

  it('keeps its place in a plan that has become shorter since, without what is gone', () => {
    const { record } = run(['next', 'next', 'next', 'next', 'next', 'next', 'correct all']);
    const shorter = moments.filter(({ part, place }) => part !== 'blending' || place > 0);
    const again = takenUpAt(record, shorter);
    expect(momentOf(again)).toBe(5);
    expect(ahead(again)).toEqual(shorter.map((_, number) => number).slice(6));
  });
});
