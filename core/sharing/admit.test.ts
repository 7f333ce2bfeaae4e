import { describe, expect, it } from 'vitest';
import { classId, eventId } from '../ids.ts';
import { LATEST } from '../log/clock.ts';
import { EVENT_KINDS, type LogEvent } from '../log/event.ts';
import { admit } from './admit.ts';
import { laneOf, type Role } from './role.ts';

const MINUTE = 60_000;
const came = Date.UTC(2026, 10, 30, 9);
const event = (kind: string, body: object = {}, by = 'phone', at = came): LogEvent => ({
  id: eventId(`${kind} ${JSON.stringify(body)}`),
  classId: classId('class'),
  at,
  by,
  kind,
  body,
});
const reasons = (role: Role, events: readonly LogEvent[], lane: 'run' | 'private' = 'run') => {
  const known = (id: string) => ({ hers: 'desk', own: 'phone' })[id];
  const { aside } = admit(
    classId('class'),
    { lane, at: came },
    { role, by: 'phone' },
    events,
    known,
  );
  return aside.map(({ why }) => why);
};

describe('what a record brings in', () => {
  it('is every kind that we know, of owners and teachers, each on its lane', () => {
    for (const kind of EVENT_KINDS) {
      for (const role of ['owner', 'teacher'] as const) {
        expect(reasons(role, [event(kind)], laneOf(kind))).toEqual([]);
      }
      expect(reasons('specialist', [event(kind)], laneOf(kind))).toEqual(['not-allowed']);
    }
  });

  it('is of an aide what happens in a warm-up, and nothing else', () => {
    const may = EVENT_KINDS.filter((kind) => reasons('aide', [event(kind)]).length === 0);
    expect(may).toEqual([
      'begun',
      'replanned',
      'shown',
      'called',
      'marked',
      'amended',
      'corrected',
      'ended',
      'away',
      'undone',
      'dated',
    ]);
    expect(reasons('aide', [event('sung')])).toEqual(['not-allowed']);
  });

  it.each([
    ['own', []],
    ['hers', ['not-allowed']],
    ['never heard of', ['not-allowed']],
  ])('lets an aide take back what is %s: %j', (target, expected) => {
    expect(reasons('aide', [event('undone', { event: target })])).toEqual(expected);
    expect(reasons('aide', [event('dated', { event: target, at: 5 })])).toEqual(expected);
    expect(reasons('teacher', [event('undone', { event: target })])).toEqual([]);
  });

  it('does not let an aide speak in another’s name', () => {
    expect(reasons('aide', [event('marked', {}, 'desk')])).toEqual(['not-allowed']);
    expect(reasons('teacher', [event('marked', {}, 'desk')])).toEqual([]);
  });

  it.each([
    [came + 10 * MINUTE, []],
    [came + 10 * MINUTE + 1, ['ahead']],
    [came + 365 * 24 * 60 * MINUTE, ['ahead']],
    [LATEST, ['ahead']],
    [0, []],
  ])('may bear a time of ten minutes ahead and no later: %i', (at, expected) => {
    expect(reasons('teacher', [event('shown', {}, 'phone', at)])).toEqual(expected);
  });

  it('comes in when the same record says when it really was', () => {
    const far = event('shown', {}, 'phone', LATEST);
    const dated = event('dated', { event: far.id, at: came });
    expect(reasons('teacher', [far, dated])).toEqual([]);
  });

  it('is nothing of another class, nothing on a lane that others read', () => {
    expect(reasons('owner', [{ ...event('shown'), classId: classId('other') }])).toEqual([
      'other-class',
    ]);
    expect(reasons('owner', [event('noted')])).toEqual(['wrong-lane']);
    expect(reasons('owner', [event('shown')], 'private')).toEqual(['wrong-lane']);
  });

  it('is the good events of a record in which others are set aside', () => {
    const events = [event('shown'), event('noted'), event('called')];
    const { events: taken, aside } = admit(
      classId('class'),
      { lane: 'run', at: came },
      { role: 'aide', by: 'phone' },
      events,
      () => undefined,
    );
    expect([taken.length, aside.length]).toEqual([2, 1]);
  });
});
