import { describe, expect, it, vi } from 'vitest';
import { childId, classId, eventId } from '../../core/ids.ts';
import type { EventSpec } from '../../core/log/event.ts';
import { replay } from '../../core/log/replay.ts';
import { type Shelf, shelf } from '../device/shelf.ts';
import { keptBefore, takeOverKeptBefore } from './kept-before.ts';
import { classState, openClass, record, takeBack } from './open-class.ts';

// 20 808 is 2026-12-21; what an earlier version left, word for word.
const BREAKS =
  '{"free":[{"from":20808,"to":20819},{"from":20836,"to":20836}],"until":"2027-05-28"}';
const ABSENT =
  '{"day":"2026-12-02","children":["tam"],"before":{"2026-12-01":["tam","wren","of-another-class"]}}';

const holding = (texts: Readonly<Record<string, string>>): Shelf => ({
  ...shelf,
  read: (name) => texts[name] ?? null,
});

const roster: readonly EventSpec[] = ['tam', 'wren'].map((id) => ({
  kind: 'set',
  body: { of: 'child', id: childId(id), field: 'name', value: id },
}));

const takenOver: readonly EventSpec[] = [
  { kind: 'no-school', body: { first: '2026-12-21', last: '2027-01-01', holds: true } },
  { kind: 'no-school', body: { first: '2027-01-18', last: '2027-01-18', holds: true } },
  { kind: 'away', body: { child: childId('tam'), day: '2026-12-01', away: true } },
  { kind: 'away', body: { child: childId('wren'), day: '2026-12-01', away: true } },
  { kind: 'away', body: { child: childId('tam'), day: '2026-12-02', away: true } },
];

const classOf = (specs: readonly EventSpec[]) =>
  replay(
    classId('room'),
    specs.map((spec, n) => ({
      id: eventId(`e${n}`),
      classId: classId('room'),
      at: n,
      by: 'desk',
      ...spec,
    })),
  );

describe('what an earlier version kept on the device', () => {
  it('is every break, and the absences of the children of the class', () => {
    const on = holding({ 'school-days': BREAKS, absent: ABSENT });
    expect(keptBefore(classOf(roster), on, true)).toEqual(takenOver);
    expect(keptBefore(classOf(roster), on, false)).toEqual(takenOver.slice(2));
  });

  it('is nothing where the class knows it, where nothing was kept, or where it cannot be read', () => {
    const on = holding({ 'school-days': BREAKS, absent: ABSENT });
    expect(keptBefore(classOf([...roster, ...takenOver]), on, true)).toEqual([]);
    expect(keptBefore(classOf(roster), holding({}), true)).toEqual([]);
    const broken = holding({ 'school-days': '{"free":7', absent: '[]' });
    expect(keptBefore(classOf(roster), broken, true)).toEqual([]);
    const half = holding({ absent: '{"day":"2026-12-02","children":["tam"]}' });
    expect(keptBefore(classOf(roster), half, true)).toEqual(takenOver.slice(4));
  });

  it('is taken over once: what she takes out afterwards stays out, and the device keeps its own', async () => {
    const texts = new Map([
      ['school-days', BREAKS],
      ['absent', ABSENT],
    ]);
    const on: Shelf = {
      ...shelf,
      read: (name) => texts.get(name) ?? null,
      write: (name, text) => void texts.set(name, text),
    };
    const keep = async (...specs: readonly EventSpec[]) => record(...specs).length > 0;
    await openClass(classId('kept-before'));
    const stop = takeOverKeptBefore(on, keep);
    expect(classState.value.last).toBe(0);
    record(...roster);
    await vi.waitFor(() => expect(classState.value.calendar.off).toHaveLength(2));
    expect([...classState.value.calendar.away.keys()]).toEqual(['2026-12-01', '2026-12-02']);
    await vi.waitFor(() => expect(texts.get('kept-before-taken')).toBe('["kept-before"]'));
    stop();
    takeBack(classState.value.facts.calendar.slice(0, 1));
    const stopAgain = takeOverKeptBefore(on, keep);
    await openClass(classId('kept-before'));
    expect(classState.value.calendar.off).toEqual([{ first: '2027-01-18', last: '2027-01-18' }]);
    expect(texts.get('school-days')).toBe(BREAKS);
    expect(texts.get('absent')).toBe(ABSENT);
    stopAgain();
  });
});
