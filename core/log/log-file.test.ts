import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryEvents, shuffledWithRepeats } from '../../test/arbitrary-events.ts';
import { classId, eventId, groupId } from '../ids.ts';
import type { LogEvent } from './event.ts';
import { makeLog, parseLog, type ReadLog } from './log-file.ts';
import { mergeEvents } from './merge.ts';

const note = (id: string, at: number): LogEvent => ({
  id: eventId(id),
  classId: classId('class'),
  at,
  by: 'desk',
  kind: 'noted',
  body: { drillId: null, groupId: groupId('g'), text: 'line\u2028 one\nline two, ă' },
});
const events = [note('a', 1), note('b', 2), note('c', 3)];
const whole = makeLog(events);

function read(text: string): ReadLog {
  const log = parseLog(text);
  if ('error' in log) throw new Error(log.error.code);
  return log;
}

describe('a file of events', () => {
  it('gives back every event that was put in, of newer versions too', () => {
    fc.assert(
      fc.property(arbitraryEvents(), (log) => {
        expect(read(makeLog(log))).toMatchObject({ events: mergeEvents(log, []), damaged: [] });
      }),
    );
  });

  it('is the same text for the same events, in whatever order they came', () => {
    const logs = arbitraryEvents().chain((log) =>
      fc.tuple(fc.constant(log), shuffledWithRepeats(log)),
    );
    fc.assert(
      fc.property(logs, ([log, other]) => {
        expect(makeLog(other)).toBe(makeLog(log));
      }),
    );
  });

  it('has one line of JSON for the format and one for each event', () => {
    const lines = whole.split('\n');
    expect(lines.pop()).toBe('');
    expect(lines.map((line) => JSON.parse(line))).toEqual([
      { format: 'sweepline-log', version: 1, ends: true },
      ...events,
      { end: { events: 3, crc32: expect.any(Number) } },
    ]);
  });

  it('forgives a byte-order mark, other line ends and empty lines', () => {
    const otherwise = `\uFEFF${whole.replaceAll('\n', '\r\n\r\n')}`;
    expect(read(otherwise)).toEqual(read(whole));
  });

  it('reports a damaged line by its number and takes all others', () => {
    const lines = whole.split('\n');
    lines[2] = (lines[2] as string).slice(0, 30);
    lines.splice(3, 0, '{"id":"x"}');
    const log = read(lines.join('\n'));
    expect(log.events).toEqual([events[0], events[2]]);
    expect(log.damaged.map(({ line, code }) => [line, code])).toEqual([
      [3, 'broken-off'],
      [4, 'not-an-event'],
    ]);
    expect(log.damaged[0]?.text).toBe(lines[2]);
  });

  it('takes every whole line, wherever the file was cut off or a sign was changed', () => {
    const lines = whole.trimEnd().split('\n');
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.constantFrom('cut', 'change'), (at, how) => {
        const text =
          how === 'cut' ? whole.slice(0, at) : `${whole.slice(0, at)}\u0000${whole.slice(at + 1)}`;
        const left = new Set(text.split('\n'));
        const good = events.filter((_, place) => left.has(lines[place + 1] as string));
        const log = parseLog(text);
        if ('error' in log) expect(good).toEqual([]);
        else expect(log.events).toEqual(expect.arrayContaining(good));
      }),
      { numRuns: 300 },
    );
  });

  it('is still read without its first line', () => {
    const log = read(whole.split('\n').slice(1).join('\n'));
    expect(log.events).toEqual(events);
    const broken = read(`{"format":"sweep\n${whole.split('\n').slice(1).join('\n')}`);
    expect(broken.events).toEqual(events);
    expect(broken.damaged.map(({ line }) => line)).toEqual([1]);
  });

  it('keeps events of a newer version and says how many they are', () => {
    const newer = { ...note(eventId('n'), 4), kind: 'sung' };
    const log = read(makeLog([...events, newer]));
    expect(log.events).toContainEqual(newer);
    expect(log.notUnderstood).toBe(1);
  });

  it.each([
    ['', 'empty'],
    ['\n \n', 'empty'],
    ['name,group\nRobin,Moss', 'not-a-log'],
    ['{"a":1}', 'not-a-log'],
    [whole.replace('"version":1', '"version":2'), 'newer-version'],
  ])('says what it is instead: %j is %s', (text, code) => {
    expect(parseLog(text)).toMatchObject({ error: { code } });
  });

  it('may be empty of events', () => {
    expect(read(makeLog([]))).toEqual({
      events: [],
      damaged: [],
      notUnderstood: 0,
      isWhole: true,
    });
  });

  it('says when it is not as it was saved: cut off, a line gone, a sign changed', () => {
    const lines = whole.split('\n');
    expect(read(whole).isWhole).toBe(true);
    expect(read(lines.toSpliced(2, 1).join('\n')).isWhole).toBe(false);
    expect(read(lines.toSpliced(4, 1).join('\n')).isWhole).toBe(false);
    expect(read(whole.replace('line two', 'line 2')).isWhole).toBe(false);
    for (let at = (lines[0] as string).length + 1; at < whole.length - 1; at += 1) {
      expect(read(whole.slice(0, at)).isWhole, `cut at ${at}`).toBe(false);
    }
  });

  it('does not say so of files of the first version, which have no last line', () => {
    const first = [JSON.stringify({ format: 'sweepline-log', version: 1 })];
    const text = [...first, ...events.map((event) => JSON.stringify(event))].join('\n');
    expect(read(text)).toEqual({ events, damaged: [], notUnderstood: 0, isWhole: null });
  });
});
