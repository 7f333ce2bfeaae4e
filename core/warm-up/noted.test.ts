import { describe, expect, it } from 'vitest';
import type { Drill } from '../drills/drill.ts';
import { childId, drillId, eventId, groupId } from '../ids.ts';
import type { DrillRecord } from '../log/class-state.ts';
import type { EventSpec } from '../log/event.ts';
import { callNobody } from './calling.ts';
import { momentsOf } from './moments.ts';
import { beginningOf, changeOf, eventsBetween } from './noted.ts';
import { type Act, act, standingAt } from './standing.ts';

const drill: Drill = {
  seed: 1,
  visual: ['sh=SH'],
  auditory: [],
  board: { shape: 'closed', piles: [['sh=SH'], ['e=EH'], ['d=D']] },
  run: [
    { cards: ['sh=SH', 'e=EH', 'd=D'], word: 'shed', sounds: [], kind: 'real' },
    { cards: ['b=B', 'e=EH', 'd=D'], word: 'bed', sounds: [], kind: 'real' },
  ],
  shortfall: null,
};
const manner = { moments: momentsOf(drill), blending: 'whole' } as const;
const at = (place: number) => ({
  drillId: drillId('drill'),
  groupId: groupId('group'),
  drill,
  standing: standingAt(3, place),
  calling: callNobody([]),
  count: 5,
});

function noted(place: number, what: Act, known?: Pick<DrillRecord, 'shown' | 'calls'>) {
  const before = at(place);
  const after = { ...before, standing: act(before.standing, what, manner) };
  return eventsBetween(before, after, what, known).map(shortly);
}

function shortly({ kind, body }: EventSpec): string {
  if (kind === 'undone') return `undone ${body.event}`;
  if (kind === 'ended') return `ended ${body.complete}`;
  if ('part' in body) return `${kind} ${body.part} ${body.place}`;
  return kind;
}

describe('what the log is told', () => {
  it('begins with the drill, the day and the card that is up', () => {
    expect(beginningOf(at(0), '2026-03-04').map(shortly)).toEqual(['begun', 'shown visual 0']);
    expect(beginningOf(at(0), '2026-03-04')[0]?.body).toMatchObject({ day: '2026-03-04' });
    expect(beginningOf(at(0), '2026-03-04', false).map(shortly)).toEqual(['begun']);
  });

  it('has what comes up, and the end when nothing is left', () => {
    expect(noted(0, 'next')).toEqual(['shown blending 0']);
    expect(noted(1, 'back')).toEqual(['shown visual 0']);
    expect(noted(2, 'next')).toEqual(['ended true']);
  });

  it('has the plan that was changed, and what is up by it where something else lay', () => {
    const changed = { ...drill, run: drill.run.slice(1) };
    const upAt = (place: number) => changeOf({ ...at(place), drill: changed }, drill).map(shortly);
    expect(upAt(0)).toEqual(['replanned']);
    expect(upAt(1)).toEqual(['replanned', 'shown blending 0']);
    expect(upAt(2)).toEqual(['replanned']);
    expect(changeOf({ ...at(0), drill: changed }, drill)[0]?.body).toEqual({
      drillId: drillId('drill'),
      drill: changed,
    });
  });

  it('says the count of what is noted after it was done', () => {
    const before = at(0);
    const after = { ...before, standing: act(before.standing, 'next', manner), count: 6 };
    const bodies = (late: boolean) =>
      eventsBetween(before, after, 'next', undefined, late).map(({ body }) => body);
    expect(bodies(true)).toMatchObject([{ part: 'blending', count: 6 }]);
    expect(bodies(false)[0]).not.toHaveProperty('count');
    expect(beginningOf(before, '2026-03-04')[1]?.body).toMatchObject({ count: 5 });
  });

  it('takes back what was skipped', () => {
    const shown = [{ id: eventId('that'), at: 1, part: 'blending', place: 0 }] as const;
    expect(noted(1, 'skip', { shown, calls: [] })).toEqual(['undone that', 'shown blending 1']);
  });

  it('says nothing of a sweep, an answer or a blank sheet', () => {
    for (const what of ['sweep', 'answer', 'pause'] as const) expect(noted(1, what)).toEqual([]);
  });

  it('has a child called for the card that comes up, and takes a call back', () => {
    const before = {
      ...at(0),
      calling: { ...callNobody([]), on: true, readers: [childId('Ada')] },
    };
    const standing = act(before.standing, 'next', manner);
    const after = {
      ...before,
      standing,
      calling: { ...before.calling, readers: [childId('Ada'), childId('Bo')] },
    };
    expect(eventsBetween(before, after, 'next', undefined).map(shortly)).toEqual([
      'shown blending 0',
      'called blending 0',
    ]);
    const calls = [
      { id: eventId('call'), at: 1, part: 'visual', place: 0, child: childId('Ada') },
    ] as const;
    const other = { ...before, calling: { ...before.calling, readers: [childId('Cy')] } };
    expect(eventsBetween(before, other, 'next', { shown: [], calls }).map(shortly)).toEqual([
      'undone call',
      'called visual 0',
    ]);
  });

  it('has a correction once its last turn is over, and not when it is left', () => {
    let turns = act(standingAt(3, 1), 'correct', manner);
    for (let step = 0; step < 11; step++) turns = act(turns, 'correct', manner);
    const before = { ...at(1), standing: turns };
    const after = { ...before, standing: act(turns, 'correct', manner) };
    expect(eventsBetween(before, after, 'correct', undefined).map(shortly)).toEqual([
      'corrected blending 0',
    ]);
    const left = { ...before, standing: act(turns, 'let-go', manner) };
    expect(eventsBetween(before, left, 'let-go', undefined)).toEqual([]);
  });
});
