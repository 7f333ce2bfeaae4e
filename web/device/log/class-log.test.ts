import { describe, expect, it } from 'vitest';
import { childId, classId, eventId } from '../../../core/ids.ts';
import { WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { LATEST } from '../../../core/log/clock.ts';
import type { EventSpec } from '../../../core/log/event.ts';
import type { EventStore } from '../../../core/log/event-store.ts';
import { replay } from '../../../core/log/replay.ts';
import { announce } from './announce.ts';
import { openClassLog } from './class-log.ts';
import { createMemoryStore } from './memory-store.ts';
import { keepGoing } from './steady-store.ts';
import { failureOf } from './store-error.ts';

let lastId = 0;
let lastChannel = 0;

/** A device with a clock that can be set, and windows on one class. */
function device(store: EventStore = createMemoryStore()) {
  const clock = { now: 1_000_000 };
  const channel = `test ${lastChannel++}`;
  const stores: EventStore[] = [];
  return {
    clock,
    store,
    /** Opens a window; it reads from the device's store or from another one. */
    async window(from = store) {
      const own = announce(keepGoing(from), channel);
      stores.push(own);
      const log = await openClassLog({
        store: own,
        classId: classId('class'),
        device: 'desk',
        now: () => clock.now,
        newId: () => `id ${lastId++}`,
      });
      return { log, store: own };
    },
    async end() {
      await Promise.all(stores.map((own) => own.close()));
    },
  };
}

const name = (value: string): EventSpec => ({
  kind: 'set',
  body: { of: 'child', id: childId('r'), field: 'name', value },
});
const note = (text: string): EventSpec => ({
  kind: 'noted',
  body: { drillId: null, groupId: WHOLE_CLASS, text },
});

describe('an open class', () => {
  it('shows what was recorded at once, before it is kept', async () => {
    const { window, end } = device();
    const { log } = await window();
    const { kept } = log.record(name('Robin'));
    expect(log.state.value.children.get(childId('r'))?.name).toBe('Robin');
    expect(await kept).toEqual({ kept: true });
    await end();
  });

  it('is the same when it is opened again', async () => {
    const { window, end } = device();
    const { log } = await window();
    await log.record(name('Robin'), note('one'), note('two')).kept;
    const again = await window();
    expect(again.log.state.value).toEqual(log.state.value);
    await end();
  });

  it('keeps the order of what happened when the clock is set back', async () => {
    const { clock, window, end } = device();
    const { log } = await window();
    await log.record(name('Robin')).kept;
    clock.now -= 500_000;
    await log.record(name('R. B.')).kept;
    const { log: again } = await window();
    again.record(name('Robin again'));
    expect(log.state.value.children.get(childId('r'))?.name).toBe('R. B.');
    expect(again.state.value.children.get(childId('r'))?.name).toBe('Robin again');
    await end();
  });

  it('is set right once and for all when a wrong clock stamped something far ahead', async () => {
    const { clock, store, window, end } = device();
    clock.now = Date.UTC(2026, 10, 30);
    const { log } = await window();
    await log.record(note('one'), note('two'), note('three')).kept;
    const far = {
      id: eventId('far'),
      classId: classId('class'),
      at: LATEST,
      by: 'desk',
      ...name('Robin'),
    };
    await store.append([far]);
    const { log: again } = await window();
    clock.now += 60_000;
    const { events } = again.record(name('R. B.'));
    expect(events[0]?.at).toBe(clock.now);
    expect(again.state.value.children.get(childId('r'))?.name).toBe('R. B.');
    const { log: later } = await window();
    expect(later.state.value).toEqual(again.state.value);
    expect(later.state.value.facts.dates).toHaveLength(1);
    await end();
  });

  it('tells apart in time what was recorded together', async () => {
    const { window, end } = device();
    const { log } = await window();
    const { events } = log.record(note('one'), note('two'), note('three'));
    expect(new Set(events.map(({ at }) => at)).size).toBe(3);
    expect(log.state.value.notes.map(({ text }) => text)).toEqual(['one', 'two', 'three']);
    await end();
  });

  it('takes up what another window on the class records', async () => {
    const { window, end } = device();
    const desk = await window();
    const stage = await window();
    await desk.log.record(note('from the desk')).kept;
    await stage.log.record(note('from the stage')).kept;
    await expect.poll(() => stage.log.state.value.notes.length).toBe(2);
    await expect.poll(() => desk.log.state.value.notes.length).toBe(2);
    expect(desk.log.state.value).toEqual(stage.log.state.value);
    await end();
  });

  it('loses nothing that another window records while it is being opened', async () => {
    const { store, window, end } = device();
    const desk = await window();
    let open: () => void = () => {};
    const opened = new Promise<void>((resolve) => {
      open = resolve;
    });
    const opening = window({
      ...store,
      async eventsOf(classId) {
        const read = await store.eventsOf(classId);
        await opened;
        return read;
      },
    });
    await desk.log.record(note('meanwhile')).kept;
    await new Promise((resolve) => setTimeout(resolve, 50));
    open();
    const stage = await opening;
    expect(stage.log.state.value.notes.map(({ text }) => text)).toEqual(['meanwhile']);
    await end();
  });

  it('shows no more, in any window, what was removed for good', async () => {
    const { window, end } = device();
    const [here, there] = [await window(), await window()];
    await here.log.record(name('Robin'), note('stays')).kept;
    await expect.poll(() => there.log.state.value.children.size).toBe(1);
    await here.store.remove(classId('class'), ['r']);
    expect(here.log.state.value.children.size).toBe(0);
    await expect.poll(() => there.log.state.value.children.size).toBe(0);
    expect((await window()).log.state.value).toEqual(here.log.state.value);
    await end();
  });

  it('goes on when nothing can be kept, says so, and holds all of it for a copy', async () => {
    const refused = async () => failureOf('refused');
    const store: EventStore = {
      append: refused,
      eventsOf: refused,
      classes: refused,
      forget: refused,
      remove: refused,
      recall: refused,
      close: async () => {},
    };
    const { window, end } = device(store);
    const { log, store: steady } = await window();
    expect(steady.trouble.value?.code).toBe('refused');
    const { kept } = log.record(name('Robin'), note('one'));
    expect(await kept).toMatchObject({ error: { code: 'refused' } });
    expect(log.state.value.children.get(childId('r'))?.name).toBe('Robin');
    expect(replay(classId('class'), steady.unsaved.value)).toEqual(log.state.value);
    await end();
  });
});
