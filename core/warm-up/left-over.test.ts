import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Flip } from '../boards/shapes/board.ts';
import type { AuditorySound, Drill } from '../drills/drill.ts';
import { drillId, eventId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { DrillRecord } from '../log/class-state.ts';
import { leftOver, takingUp } from './left-over.ts';
import { type Moment, momentsOf } from './moments.ts';

const flip = (word: string): Flip => ({
  cards: [...word].map((letter): CardId => `${letter}=${letter}`),
  word,
  sounds: [],
  kind: 'nonsense',
});

function drillOf(visual: readonly CardId[], words: readonly string[]): Drill {
  return {
    seed: visual.length * 100 + words.length,
    visual,
    auditory: [],
    board: { shape: 'syllable', piles: [words.map((word): CardId => `${word}=${word}`)] },
    run: words.map(flip),
    shortfall: null,
  };
}

const yesterday = drillOf(['a=A', 'b=B', 'c=C'], ['bat', 'bap', 'tap', 'tat', 'pat', 'pap']);
const today = drillOf(['d=D', 'b=B', 'e=E', 'f=F'], ['dog', 'dig', 'fig']);

/** The record of a drill of which so many moments have come up, one after another. */
function record(drill: Drill, count: number): DrillRecord {
  const shown = momentsOf(drill)
    .slice(0, count)
    .map(({ part, place }, at) => ({ id: eventId(`e${at}`), at: at + 1, part, place }));
  return {
    id: drillId('one'),
    groupId: groupId('g'),
    day: '2026-11-30',
    drill,
    begunBy: [eventId('begun')],
    earlier: [],
    at: 0,
    shown,
    calls: [],
    marks: [],
    corrections: [],
    ended: null,
  };
}

const nameOf = (moment: Moment) =>
  moment.part === 'blending' ? moment.flip.word : moment.part === 'visual' ? moment.id : '';

describe('what was left over', () => {
  it('is what was up and all after it', () => {
    const { up, rest } = leftOver(record(yesterday, 5));
    expect(up && nameOf(up)).toBe('bap');
    expect(rest.map(nameOf)).toEqual(['bap', 'tap', 'tat', 'pat', 'pap']);
  });

  it('with what came before is the whole plan, wherever it was left', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9 }), (count) => {
        const { standing, rest } = leftOver(record(yesterday, count));
        expect(standing.at + rest.length).toBe(9);
      }),
    );
  });
});

describe('taking up what was left', () => {
  it('puts the words that were left, on their board, in the place of the plan’s', () => {
    const { rest } = leftOver(record(yesterday, 7));
    const plan = takingUp(today, yesterday, rest);
    expect(plan.run.map(({ word }) => word)).toEqual(['tat', 'pat', 'pap']);
    expect(plan.board).toBe(yesterday.board);
    expect([plan.seed, plan.visual]).toEqual([today.seed, today.visual]);
  });

  it('begins with the cards that were left, none of them twice', () => {
    const { rest } = leftOver(record(yesterday, 2));
    expect(takingUp(today, yesterday, rest).visual).toEqual(['b=B', 'c=C', 'd=D', 'e=E']);
  });

  it('keeps words known by sight behind the cards, and behind the sounds', () => {
    const said = (word: string): AuditorySound => ({
      phonemes: ['AY'],
      spellings: [`${word}=sight`],
    });
    const sound: AuditorySound = { phonemes: ['AY'], spellings: ['i=AY'] };
    const left: Drill = {
      ...drillOf(['a=A', 'b=B', 'was=sight', 'said=sight'], []),
      auditory: [sound, said('i'), said('eye')],
    };
    const plan: Drill = {
      ...drillOf(['c=C', 'd=D', 'said=sight', 'they=sight'], []),
      auditory: [sound, said('eye')],
    };
    const { rest } = leftOver(record(left, 2));
    const taken = takingUp(plan, left, rest);
    expect(taken.visual).toEqual(['b=B', 'c=C', 'was=sight', 'said=sight']);
    expect(taken.auditory).toEqual([sound, said('i'), said('eye')]);
  });
});
