import { serialize } from 'node:v8';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classId, eventId } from '../../../core/ids.ts';
import { SMALL_DRILL } from '../../../test/arbitrary-events.ts';
import { classYear } from '../../../test/class-year.ts';
import { decodePage, encodePage } from './page.ts';

const text = fc.string({ unit: 'binary' });
const events = fc.array(
  fc.record({
    id: text.map(eventId),
    classId: fc.constant(classId('room')),
    at: fc.integer(),
    by: text,
    kind: text,
    body: fc.jsonValue({ stringUnit: 'binary' }),
  }),
);

describe('a page of events', () => {
  it('gives back what JSON would, whatever the bodies hold', () => {
    fc.assert(
      fc.property(events, (some) => {
        expect(decodePage(classId('room'), encodePage(some))).toEqual(
          JSON.parse(JSON.stringify(some)),
        );
      }),
    );
  });

  it('gives back fields of any name, and leaves out those without a value, as JSON does', () => {
    const bodies = [
      JSON.parse('{"__proto__": {"a": 1}, "constructor": "x", "": [{"b": null}]}'),
      { there: 1, not: undefined, inside: { not: undefined } },
      ['a', { b: 'c' }],
      null,
      -1,
      'text',
    ];
    const some = bodies.map((body, at) => ({
      id: eventId(`e${at}`),
      classId: classId('room'),
      at,
      by: '',
      kind: 'k',
      body,
    }));
    const read = decodePage(classId('room'), encodePage(some));
    expect(JSON.stringify(read)).toBe(JSON.stringify(some));
    expect(Object.getPrototypeOf(read[0]?.body)).toBe(Object.prototype);
  });

  it.each<readonly [what: string, body: unknown]>([
    ['a moment', { drillId: 'd', part: 'blending', place: 4 }],
    ['a moment whose place is no number', { drillId: 'd', part: 'blending', place: [null] }],
    ['a moment with its count', { drillId: 'd', part: 'visual', place: 0, count: 12 }],
    ['a moment in another order', { place: 4, drillId: 'd', part: 'blending' }],
    ['a moment with more', { drillId: 'd', part: 'blending', place: 4, child: 'c' }],
    ['a drill', { drillId: 'd', drill: SMALL_DRILL }],
    ['flips with joints', [{ ...SMALL_DRILL.run[0], joints: [1] }, SMALL_DRILL.run[2]]],
    ['a flip without cards', { run: [{ ...SMALL_DRILL.run[1], cards: [] }] }],
  ])('gives back %s as it was', (_, body) => {
    const event = {
      id: eventId('e'),
      classId: classId('room'),
      at: 1,
      by: 'desk',
      kind: 'k',
      body,
    };
    const read = decodePage(classId('room'), encodePage([event, event]));
    expect(JSON.stringify(read)).toBe(JSON.stringify([event, event]));
  });

  it('reads the pages of the first version', () => {
    const [first] = classYear(classId('room'), 1);
    if (!first) throw new Error('An empty year.');
    const { id, at, by, kind, body } = first;
    expect(decodePage(classId('room'), JSON.stringify([[id, at, by, kind, body]]))).toEqual([
      first,
    ]);
  });

  it('is handed over as a byte a sign, whatever letters it holds', () => {
    const body = { text: 'ă and ĕ again 🚀' };
    const page = encodePage([
      { id: eventId('é'), classId: classId('room'), at: 1, by: 'desk', kind: 'noted', body },
    ]);
    // What a structured clone writes: the text, and a few bytes that say so.
    expect(serialize(page).length).toBeLessThan(page.length + 10);
  });

  it('is less than half as long as plain JSON for the events of a class', () => {
    const year = classYear(classId('room'), 4096);
    expect(encodePage(year).length).toBeLessThan(JSON.stringify(year).length / 2);
  });
});
