import { describe, expect, it } from 'vitest';
import { SMALL_DRILL } from '../../test/arbitrary-events.ts';
import { classId, drillId, eventId, groupId } from '../ids.ts';
import type { Happening, Mark } from '../log/class-state.ts';
import { callNobody } from './calling.ts';
import type { Led } from './lead.ts';
import { marksSince } from './marks-since.ts';
import { type Moment, momentsOf } from './moments.ts';
import { standingAt } from './standing.ts';

const moments = momentsOf(SMALL_DRILL);
const [first, second] = moments as [Moment, Moment];
const happening = ({ part, place }: Moment, at: number): Happening => ({
  ...{ id: eventId(`${at}`), at, part, place },
});
const marked = (moment: Moment, at: number, count?: number): Mark => ({
  ...happening(moment, at),
  ...{ cards: [], broke: 1, heard: null, child: null },
  ...(count === undefined ? {} : { count }),
});

/** A press that the lead has not answered: from one place in the plan to another. */
function waits(from: number, to: number, count: number): Led['waiting'] {
  const at = (place: number, counted: number) => ({
    ...{ classId: classId('class'), groupId: groupId('group'), drillId: drillId('drill') },
    ...{ drill: SMALL_DRILL, standing: standingAt(moments.length, place), blending: 'whole' },
    ...{ calling: callNobody([]), dictated: [], asking: null, rehearsed: null },
    ...{ count: counted, by: 'laptop' },
  });
  const [before, after] = [at(from, count - 1), at(to, count)] as const;
  const noted = { before, after, what: 'next', late: true } as const;
  return [{ id: `${count}`, noted } as Led['waiting'][number]];
}

describe('the marks since a moment came up', () => {
  const shown = [happening(first, 10), happening(second, 30), happening(first, 50)];
  const marks = [marked(first, 20, 3), marked(second, 40, 5), marked(first, 60, 7)];

  it('are those after it came up last', () => {
    expect(marksSince(first, { shown, marks }, [], moments)).toEqual([marks[2]]);
    expect(marksSince(second, { shown, marks }, [], moments)).toEqual([marks[1]]);
  });

  it('are all where the log does not know yet that it came up', () => {
    expect(marksSince(first, { shown: [], marks }, [], moments)).toEqual([marks[0], marks[2]]);
  });

  it('are none while it has come again here and the lead does not know', () => {
    expect(marksSince(first, { shown, marks }, waits(1, 0, 8), moments)).toEqual([]);
    const again = [...marks, marked(first, 70, 8)];
    expect(marksSince(first, { shown, marks: again }, waits(1, 0, 8), moments)).toEqual([again[3]]);
  });
});
