import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChildId, childId } from '../ids.ts';
import { makeRandom } from '../random.ts';
import {
  type Calling,
  callAfter,
  callNobody,
  callOn,
  callPresent,
  callTakenUp,
  type Lots,
  readerAt,
  turnCalling,
} from './calling.ts';
import type { Moment } from './moments.ts';
import { nextChildren } from './next-child.ts';
import { type Act, act, type Standing, standingAt } from './standing.ts';

const moments = Array.from(
  { length: 12 },
  (_, place): Moment => ({
    part: 'blending',
    place,
    flip: { cards: ['b=B', 'a=AE', 't=T'], word: 'bat', sounds: [], kind: 'real' },
    pieces: [],
  }),
);
const manner = { moments, blending: 'whole' } as const;

function lotsOf(present: readonly ChildId[], seed = 1): Lots {
  const random = makeRandom(seed);
  return { present, draw: (calls, count) => nextChildren({ present, calls }, count, random) };
}

const three = [childId('Ada'), childId('Bo'), childId('Cy')];

interface Now {
  readonly standing: Standing;
  readonly calling: Calling;
}

function does(now: Now, what: Act, lots: Lots): Now {
  const standing = act(now.standing, what, manner);
  return { standing, calling: callAfter(now.calling, now.standing, standing, what, lots) };
}

function begun(lots: Lots): Now {
  const standing = standingAt(moments.length);
  return { standing, calling: turnCalling(callNobody([]), true, 0, lots) };
}

describe('calling on children', () => {
  it('begins with the card that is up, and has the next ones ready', () => {
    const { calling } = begun(lotsOf(three));
    expect(three).toContain(readerAt(calling, 0));
    expect(calling.upcoming).toHaveLength(3);
    expect(calling.calls).toEqual([readerAt(calling, 0)]);
  });

  it('calls those in the order that was announced', () => {
    const lots = lotsOf(three);
    let now = begun(lots);
    for (let place = 1; place < 9; place++) {
      const [announced] = now.calling.upcoming;
      now = does(now, 'next', lots);
      expect(readerAt(now.calling, place)).toBe(announced);
    }
  });

  it('leaves the turn to a child whose card was skipped', () => {
    const lots = lotsOf(three);
    const now = begun(lots);
    const reader = readerAt(now.calling, 0);
    const after = does(now, 'skip', lots);
    expect(readerAt(after.calling, 0)).toBeNull();
    expect(readerAt(after.calling, 1)).toBe(reader);
    expect(after.calling.calls).toEqual([reader]);
  });

  it('keeps who read a card when she goes back to it, and does not count it twice', () => {
    const lots = lotsOf(three);
    const now = does(does(begun(lots), 'next', lots), 'next', lots);
    const back = does(does(now, 'back', lots), 'next', lots);
    expect(back.calling.readers).toEqual(now.calling.readers);
    expect(back.calling.calls).toEqual(now.calling.calls);
  });

  it('has a corrected word read again by the child who read it', () => {
    const lots = lotsOf(three);
    let now = does(begun(lots), 'next', lots);
    const reader = readerAt(now.calling, 1);
    now = does(now, 'correct', lots);
    while (now.standing.turn !== null) now = does(now, 'correct', lots);
    for (let more = 0; more < 4; more++) now = does(now, 'next', lots);
    expect(now.standing.order[now.standing.at]).toBe(1);
    expect(readerAt(now.calling, now.standing.at)).toBe(reader);
  });

  it('lets her call on whom she likes; who was called keeps the next turn', () => {
    const lots = lotsOf(three);
    const { calling } = begun(lots);
    const reader = readerAt(calling, 0) as string;
    const other = three.find((child) => child !== reader) as ChildId;
    const after = callOn(calling, other, 0, lots);
    expect(readerAt(after, 0)).toBe(other);
    expect(after.upcoming[0]).toBe(reader);
    expect(after.calls).toEqual([other]);
  });

  it('calls nobody who has gone, and stops when asked', () => {
    const { calling } = begun(lotsOf(three));
    const gone = readerAt(calling, 0) as string;
    const there = three.filter((child) => child !== gone);
    const after = callPresent(calling, 0, lotsOf(there, 2));
    expect(there).toContain(readerAt(after, 0));
    for (const child of after.upcoming) expect(there).toContain(child);
    const off = turnCalling(after, false, 0, lotsOf(there));
    expect([readerAt(off, 0), off.upcoming, off.calls]).toEqual([null, [], []]);
  });

  it('gives a warm-up that is taken up the child whose turn it was, and those before', () => {
    const lots = lotsOf(three);
    const left = does(does(begun(lots), 'next', lots), 'next', lots);
    const called = left.calling.readers.map((child, place) => ({
      child: child as ChildId,
      part: 'blending' as const,
      place,
    }));
    const before = { on: true, calls: left.calling.calls };
    const taken = callTakenUp(left.standing, called, moments, before);
    expect(taken.readers).toEqual(left.calling.readers);
    const stays = callPresent(taken, left.standing.at, lotsOf(three, 9));
    expect(stays.readers).toEqual(left.calling.readers);
    expect([stays.calls, stays.upcoming.length]).toEqual([left.calling.calls, 3]);
    const gone = readerAt(left.calling, 2) as string;
    const there = three.filter((child) => child !== gone);
    const another = callPresent(taken, left.standing.at, lotsOf(there));
    expect(there).toContain(readerAt(another, 2));
  });

  it('is fair to within two readings whatever is pressed, unless she chooses herself', () => {
    const acts = fc.array(fc.constantFrom<Act>('next', 'next', 'back', 'skip'), { maxLength: 40 });
    fc.assert(
      fc.property(acts, fc.integer(), (all, seed) => {
        const lots = lotsOf(three, seed);
        const { calling } = all.reduce((now, what) => does(now, what, lots), begun(lots));
        const counts = three.map((child) => calling.calls.filter((one) => one === child).length);
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(2);
      }),
    );
  });
});
