import { expect, it } from 'vitest';
import { standingAt } from '../../test/arbitrary-events.ts';
import { classId, eventId, type GroupId, groupId } from '../ids.ts';
import type { EventSpec, LogEvent } from './event.ts';
import { replay } from './replay.ts';
import { standingHistory } from './standing-history.ts';

it('tells every place of a group in order, but for what was taken back', () => {
  const stands = (id: GroupId, step: number): EventSpec => ({
    kind: 'set',
    body: { of: 'group', id, field: 'standing', value: standingAt(step) },
  });
  const specs: readonly EventSpec[] = [
    stands(groupId('oak'), 3),
    stands(groupId('fern'), 1),
    stands(groupId('oak'), 40),
    { kind: 'undone', body: { event: eventId('e2') } },
    stands(groupId('oak'), 5),
  ];
  const events = specs.map(
    (spec, n): LogEvent => ({
      id: eventId(`e${n}`),
      classId: classId('room'),
      at: 10 + n,
      by: 'desk',
      ...spec,
    }),
  );
  const stood = standingHistory(replay(classId('room'), events), groupId('oak'));
  expect(stood.map(({ at, standing }) => [at, standing.upTo])).toEqual([
    [10, 3],
    [14, 5],
  ]);
});
