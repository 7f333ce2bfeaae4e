import { describe, expect, it } from 'vitest';
import { parseBoardLink } from '../../core/boards/shapes/board-link.ts';
import { childId, classId, drillId, groupId } from '../../core/ids.ts';
import { WHOLE_CLASS } from '../../core/log/class-state.ts';
import { EVENT_KINDS } from '../../core/log/event.ts';
import { progressOf } from '../../core/log/group-place.ts';
import { parseLog } from '../../core/log/log-file.ts';
import { replay } from '../../core/log/replay.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { earlierOrder } from '../../core/sequence/earlier-orders.ts';
import { addItem, makeProgress, taughtOf } from '../../core/sequence/progress.ts';
import { parseSequenceCsv } from '../../core/sequence/sequence-csv.ts';
import { unlockText } from '../../web/device/log/lock.ts';
import { eventOf } from '../../web/device/log/loose-record.ts';
import { readPage } from '../../web/device/log/page.ts';
import { parseSheet, readSheet } from '../../web/device/log/sheet.ts';
import { exhibitsOf, VERSIONS } from './exhibits.ts';

const ROOM = classId('museum-room-9');

function logOf(text: string) {
  const log = parseLog(text);
  if ('error' in log) throw new Error(log.error.message);
  return log;
}

it('has what version 0.1.0 stored', () => {
  expect(VERSIONS).toContain('0.1.0');
});

describe.each(VERSIONS)('what version %s stored', (version) => {
  const exhibits = exhibitsOf(version);
  const { events, damaged, notUnderstood } = logOf(exhibits.copy);
  const state = replay(ROOM, events);

  it('is a copy of which every line is read, every kind of event known, and the newer one kept', () => {
    expect(damaged).toEqual([]);
    expect(notUnderstood).toBe(1);
    expect(events.length).toBe(1351);
    const kinds = new Set(events.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(expect.arrayContaining(['of-a-newer-version', 'set']));
    const from010 =
      'set begun replanned shown called marked amended corrected ended check-begun check-marked check-ended noted wrote decided undone';
    for (const kind of from010.split(' ')) {
      expect(kinds).toContain(kind);
      expect(EVENT_KINDS).toContain(kind);
    }
  });

  it('is the class it was: its children, groups, drills, checks and lines', () => {
    expect(state.name).toBe('Room 9');
    const here = [...state.children.values()].filter(({ removed }) => !removed);
    expect(here.map(({ name }) => name).sort()).toEqual([
      'Amaro',
      'Bibi',
      'Cosmo',
      'Delphine-Rosalie',
      'Ezra',
      'Fenna',
    ]);
    expect(state.children.get(childId('child-left'))?.removed).toBe(true);
    expect(state.groups.get(groupId('group-maple'))?.name).toBe('Maple');
    expect(state.groups.get(groupId('group-gone'))?.removed).toBe(true);
    expect(here.filter(({ group }) => group === 'group-maple').map(({ name }) => name)).toEqual([
      'Amaro',
      'Delphine-Rosalie',
    ]);
    expect(state.drills.size).toBe(22);
    expect(state.drills.get(drillId('drill-1'))?.ended?.complete).toBe(true);
    expect(state.drills.get(drillId('drill-2'))?.ended?.complete).toBe(false);
    expect(state.drills.get(drillId('drill-3'))?.ended).toBeNull();
    expect(state.checks.size).toBe(2);
    const said = JSON.stringify(events);
    expect(said).toContain('ă and ĕ again tomorrow; “th” too');
  });

  it('keeps its marks: every one that was not taken back, with what was heard', () => {
    const takenBack = new Set(
      events.flatMap(({ kind, body }) =>
        kind === 'undone' ? [(body as { readonly event: string }).event] : [],
      ),
    );
    const made = events.filter(({ kind, id }) => kind === 'marked' && !takenBack.has(id));
    const marks = [...state.drills.values()].flatMap(({ marks: some }) => some);
    expect(marks.map(({ id }) => id).sort()).toEqual(made.map(({ id }) => id).sort());
    expect(marks.length).toBeGreaterThan(20);
  });

  it('stands where it stood: step 40 with a card more, and 18 steps of her own order', () => {
    const whole = state.groups.get(WHOLE_CLASS);
    const maple = state.groups.get(groupId('group-maple'));
    if (!whole?.standing || !maple?.standing) throw new Error('a group is missing');
    const taught = taughtOf(progressOf(whole.standing, SEQUENCE)).correspondences;
    for (const id of ['a=AE', 'sh=SH', 'st=S+T', 'oa=OW']) expect(taught).toContain(id);
    const then = makeProgress(earlierOrder(1) ?? SEQUENCE, 40);
    const asThen = taughtOf(addItem(then, { kind: 'card', id: 'oa=OW' }));
    expect(taughtOf(progressOf(whole.standing, SEQUENCE))).toEqual(asThen);
    const own = progressOf(maple.standing, SEQUENCE);
    expect(own.upTo).toBe(18);
    expect(own.sequence.name).toBe('Our own order');
    expect(own.sequence.steps.length).toBe(24);
  });

  it('lies in the database, on pages and beside them, with the same events', () => {
    const { loose, pages } = exhibits.database;
    const sealed = pages.map(({ classId, text }) => readPage(classId, text));
    expect(sealed.every(({ damaged }) => damaged === 0)).toBe(true);
    const onTheirOwn = loose.map(eventOf).filter((event) => event !== null);
    expect(onTheirOwn.length).toBe(loose.length);
    const all = [...sealed.flatMap((page) => page.events), ...onTheirOwn];
    const kept = all.filter(({ classId }) => classId === ROOM);
    const byId = new Map(kept.map((event) => [event.id, event]));
    expect(byId.size).toBe(events.length);
    for (const event of events) expect(byId.get(event.id)).toEqual(event);
  });

  it('lies in the second copy with the same events', () => {
    const kept = Object.entries(exhibits.secondCopy).flatMap(([file, text]) => {
      const sheet = parseSheet(decodeURIComponent(file));
      if (sheet?.classId !== ROOM) return [];
      const read = readSheet(sheet, text);
      expect(read.damaged).toBe(0);
      return read.events;
    });
    expect(new Set(kept.map(({ id }) => id))).toEqual(new Set(events.map(({ id }) => id)));
  });

  it('opens with its passphrase, and with no other', async () => {
    expect(await unlockText(exhibits.lockedCopy, exhibits.passphrase)).toEqual({
      text: exhibits.copy,
    });
    expect(await unlockText(exhibits.lockedCopy, 'another')).toMatchObject({
      error: { code: 'wrong-passphrase' },
    });
  });

  it('has an order that reads as the one that was saved', () => {
    const read = parseSequenceCsv(exhibits.order, 'Our own order');
    if (!('sequence' in read)) throw new Error('the order is not read');
    expect(read.sequence.steps.length).toBe(24);
    expect(read.sequence.steps[1]?.items).toEqual([{ kind: 'card', id: 'i=IH' }]);
  });

  it('has a link to a board that leads to that board', () => {
    const link = exhibits.links.find((address) => address.startsWith('#/board?')) ?? '';
    expect(parseBoardLink(link.slice(link.indexOf('?') + 1))).toMatchObject({
      board: {
        shape: 'syllable',
        piles: [
          ['m=M', 's=S', 't=T', 'sh=SH'],
          ['a=AE', 'i=IH'],
          ['t=T', 'p=P', 'n=N'],
        ],
      },
    });
  });
});
