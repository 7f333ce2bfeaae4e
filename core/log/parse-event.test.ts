import { expect, test } from 'vitest';
import { isEvent, parseEvent } from './parse-event.ts';

const event = { id: 'e1', classId: 'c', at: 0, by: 'desk', kind: 'new kind', body: {} };

test.each<[what: string, change: object, field: string | null]>([
  ['an event of any kind', {}, null],
  ['an event with more in it, which is left out', { more: 1 }, null],
  ['an id of a hundred letters', { id: 'x'.repeat(100) }, null],
  ['an id of more', { id: 'x'.repeat(101) }, 'id'],
  ['an empty id', { id: '' }, 'id'],
  ['an id that is no text', { id: 1 }, 'id'],
  ['no class', { classId: '' }, 'classId'],
  ['no time', { at: undefined }, 'at'],
  ['a time before there were computers', { at: -1 }, 'at'],
  ['a time that is no number', { at: '1' }, 'at'],
  ['no device', { by: undefined }, 'by'],
  ['no kind', { kind: '' }, 'kind'],
  ['nothing said', { body: null }, 'body'],
  ['a list for what is said', { body: [] }, 'body'],
])('%s is told by the field that is wrong', (_, change, field) => {
  const value = { ...event, ...change };
  const parsed = parseEvent(value);
  expect(isEvent(value)).toBe(field === null);
  if (field === null) {
    const { more: _more, ...kept } = value as typeof value & { more?: unknown };
    expect(parsed).toEqual({ event: kept });
  } else expect(parsed).toMatchObject({ error: { field } });
});

test.each([null, undefined, 'text', 7, [], [event]])('%j is no event', (value) => {
  expect(isEvent(value)).toBe(false);
  expect(parseEvent(value)).toMatchObject({ error: { field: null } });
});
