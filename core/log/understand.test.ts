import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryEvents, SMALL_DRILL, SMALL_FORM } from '../../test/arbitrary-events.ts';
import { childId, classId, eventId, groupId } from '../ids.ts';
import type { LogEvent } from './event.ts';
import { parseEvent } from './parse-event.ts';
import { understand } from './understand.ts';

const stamp = { id: eventId('e1'), classId: classId('class'), at: 1, by: 'desk' };
const understood = (kind: string, body: unknown): boolean =>
  understand({ ...stamp, kind, body }) !== null;
const moment = { drillId: 'one', part: 'blending', place: 3 };
const check = { checkId: 'one', child: 'r', day: '2026-03-02', form: SMALL_FORM, limit: 60 };
const item = { checkId: 'one', item: 0, outcome: 'wrong', broke: [{ card: 1, heard: null }] };
const mark = { ...moment, cards: ['m=M', 'a=AE', 't=T'], broke: 2, heard: null, child: null };

describe('parseEvent', () => {
  it('gives back any event that has passed through JSON', () => {
    fc.assert(
      fc.property(arbitraryEvents(), (events) => {
        for (const event of events) {
          expect(parseEvent(JSON.parse(JSON.stringify(event)))).toEqual({ event });
        }
      }),
    );
  });

  it('says of anything else which field is wrong, and never throws', () => {
    const whole: LogEvent = { ...stamp, kind: 'noted', body: {} };
    const wrong = fc
      .constantFrom('id', 'classId', 'at', 'by', 'kind', 'body')
      .chain((field) =>
        fc.tuple(fc.constant(field), fc.constantFrom(undefined, null, '', -1, 0.5, [], Infinity)),
      );
    fc.assert(
      fc.property(wrong, ([field, value]) => {
        expect(parseEvent({ ...whole, [field]: value })).toMatchObject({ error: { field } });
      }),
    );
    fc.assert(fc.property(fc.anything(), (value) => void parseEvent(value)));
  });

  it('drops fields that are not an event’s', () => {
    const event: LogEvent = { ...stamp, kind: 'noted', body: {} };
    expect(parseEvent({ ...event, script: 'x' })).toEqual({ event });
  });
});

describe('what an event says', () => {
  it.each([
    ['set', { of: 'child', id: childId('r'), field: 'group', value: null }],
    ['begun', { drillId: 'one', groupId: groupId('g'), day: '2026-03-02', drill: SMALL_DRILL }],
    ['set', { of: 'device', id: 'desk', field: 'name', value: 'Laptop' }],
    ['replanned', { drillId: 'one', drill: SMALL_DRILL }],
    ['shown', moment],
    ['called', { ...moment, child: 'r' }],
    ['marked', mark],
    ['marked', { ...mark, broke: null, heard: { kind: 'phoneme', sound: 'IH' } }],
    ['amended', { drillId: 'one', mark: 'e1', field: 'heard', value: { kind: 'left-out' } }],
    ['corrected', moment],
    ['ended', { drillId: 'one', complete: false }],
    ['noted', { drillId: null, groupId: groupId('g'), text: '' }],
    ['decided', { choice: 'allow', about: 'sounds', text: 'B AE T' }],
    ['check-begun', check],
    ['check-begun', { ...check, limit: null }],
    ['check-marked', item],
    ['check-marked', { ...item, outcome: 'right', broke: [] }],
    ['check-marked', { ...item, outcome: 'left-out', broke: [], count: 5 }],
    ['check-ended', { checkId: 'one', reached: 0, seconds: null }],
    ['wrote', { page: 'family', about: 'r', text: 'Read together!' }],
    ['no-school', { first: '2026-12-21', last: '2027-01-01', holds: true }],
    ['away', { child: 'r', day: '2026-03-02', away: false }],
    ['undone', { event: 'e0' }],
    ['shown', { ...moment, more: 'from a newer version' }],
  ])('is understood: %s %j', (kind, body) => {
    expect(understood(kind, body)).toBe(true);
  });

  it.each([
    ['sung', {}],
    ['no-school', { first: '2027-01-01', last: '2026-12-21', holds: true }],
    ['away', { child: 'r', day: 'Monday', away: true }],
    ['constructor', {}],
    ['shown', { ...moment, part: 'spelling' }],
    ['shown', { ...moment, place: -1 }],
    ['shown', { ...moment, place: 1.5 }],
    ['shown', { ...moment, place: 4e9 }],
    ['replanned', { drillId: 'one', drill: null }],
    ['marked', { ...mark, broke: 4 }],
    ['marked', { ...mark, broke: 0 }],
    ['marked', { ...mark, heard: { kind: 'phoneme', sound: 'XX' } }],
    ['marked', { ...mark, heard: { kind: 'phoneme' } }],
    ['marked', { ...mark, cards: 'mat' }],
    ['marked', { ...mark, child: undefined }],
    ['begun', { drillId: 'one', groupId: groupId('g'), day: '2026-3-2', drill: SMALL_DRILL }],
    [
      'begun',
      {
        drillId: 'one',
        groupId: groupId('g'),
        day: '2026-03-02',
        drill: { ...SMALL_DRILL, run: 1 },
      },
    ],
    ['set', { of: 'child', id: childId('r'), field: 'removed', value: 'yes' }],
    ['set', { of: 'child', id: childId('r'), field: 'archived', value: true }],
    ['set', { of: 'class', id: 'c', field: 'constructor', value: 'x' }],
    ['set', { of: 'group', id: groupId('g'), field: 'standing', value: { upTo: 3 } }],
    ['amended', { drillId: 'one', mark: 'e1', field: 'place', value: 1 }],
    ['amended', { drillId: 'one', mark: 'e1', field: 'broke', value: 'a' }],
    ['check-begun', { ...check, form: { ...SMALL_FORM, kind: 'songs' } }],
    ['check-begun', { ...check, limit: 0 }],
    ['check-marked', { ...item, outcome: 'sung' }],
    ['check-marked', { ...item, count: 0 }],
    ['check-marked', { ...item, count: 1e9 }],
    ['check-marked', { ...item, broke: [{ card: 0, heard: null }] }],
    ['check-ended', { checkId: 'one', reached: -1, seconds: null }],
    ['wrote', { page: 'diary', about: 'r', text: '' }],
    ['decided', { choice: 'stop', about: 'word', text: 'bat' }],
  ])('is not understood: %s %j', (kind, body) => {
    expect(understood(kind, body)).toBe(false);
  });
});
