import fc from 'fast-check';
import { expect, it } from 'vitest';
import { arbitraryEvents, shuffledWithRepeats } from '../../test/arbitrary-events.ts';
import { classId, eventId, groupId } from '../ids.ts';
import { atOnce } from '../paced.ts';
import type { LogEvent } from './event.ts';
import { makeLog } from './log-file.ts';
import { readsBackPaced } from './reads-back.ts';

const readsBack = (text: string, log: readonly LogEvent[]) => atOnce(readsBackPaced(text, log));

const note = (id: string, text: string): LogEvent => ({
  id: eventId(id),
  classId: classId('class'),
  at: 1,
  by: 'desk',
  kind: 'noted',
  body: { drillId: null, groupId: groupId('g'), text },
});
const events = [note('a', 'well'), note('b', 'slow'), note('c', 'fast')];

it('is so of every log, in whatever order and however often its events came', () => {
  const logs = arbitraryEvents().chain((log) =>
    fc.tuple(fc.constant(log), shuffledWithRepeats(log)),
  );
  fc.assert(
    fc.property(logs, ([log, other]) => {
      expect(readsBack(makeLog(log), other)).toBe(true);
    }),
  );
});

const whole = makeLog(events);
const lines = whole.split('\n');
const without = (at: number) => lines.filter((_, line) => line !== at).join('\n');

it.each([
  ['is empty', ''],
  ['lost an event', without(2)],
  ['lost its last line', without(4)],
  ['was cut off', whole.slice(0, -30)],
  ['says another word', whole.replace('slow', 'slaw')],
  ['holds fewer events and says so', makeLog(events.slice(1))],
  ['holds more events and says so', makeLog([...events, note('d', 'more')])],
  ['holds as many, one of them another', makeLog([...events.slice(1), note('d', 'other')])],
  [
    'holds the same ids, one telling something else',
    makeLog([...events.slice(1), note('a', 'ill')]),
  ],
])('is not so of a text that %s', (_, text) => {
  expect(readsBack(text, events)).toBe(false);
});

it('is not so of an event that no reader takes', () => {
  const odd = [...events, { ...note(eventId('d'), 'odd'), at: Number.NaN }];
  expect(readsBack(makeLog(odd), odd)).toBe(false);
});
