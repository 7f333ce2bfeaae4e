import { openDB } from 'idb';
import { classId, drillId, eventId } from '../../core/ids.ts';
import { eventsIn } from '../../core/log/class-events.ts';
import { WHOLE_CLASS } from '../../core/log/class-state.ts';
import type { EventSpec } from '../../core/log/event.ts';
import { mergeEvents } from '../../core/log/merge.ts';
import { replay } from '../../core/log/replay.ts';
import type { ClassLog } from '../../web/device/log/class-log.ts';
import { createDeviceStore, type DeviceStore, openClass } from '../../web/device/log/device-log.ts';
import { createFileDrawer } from '../../web/device/log/file-drawer.ts';
import { createIndexedStore } from '../../web/device/log/indexed-store.ts';
import { askToPersist } from '../../web/device/log/persistence.ts';
import { createAsideShelf } from '../../web/device/log/set-aside.ts';
import { exportLog, importLog } from '../../web/device/log/transfer.ts';
import { SMALL_DRILL } from '../arbitrary-events.ts';
import { classYear } from '../class-year.ts';
import { STORE_LAWS } from '../event-store-contract.ts';
import { keepClassYear, timeAppends, timeOpening, timeOpeningBoth } from './log-times.ts';

/** What the page of the log's journeys and measurements can do; they find it as `globalThis.log`. */
const exposed = {
  STORE_LAWS,
  SMALL_DRILL,
  askToPersist,
  classId,
  classYear,
  createAsideShelf,
  createDeviceStore,
  createIndexedStore,
  eventId,
  exportLog,
  importLog,
  keepClassYear,
  mergeEvents,
  note,
  openClass,
  replay,
  sheetsOfSecondCopy: () => createFileDrawer().names(),
  timeAppends,
  timeOpening,
  timeOpeningBoth,
};

declare global {
  /** The log's own modules, in the page. */
  var log: typeof exposed;
  /** The store and the class that a journey has opened in the page. */
  var store: DeviceStore;
  var opened: ClassLog;
}

globalThis.log = exposed;
if (location.pathname === '/run') void runOn();
if (location.pathname === '/look') void look();

/**
 * Runs a drill without end, as a teacher who marks every word: takes it up
 * where it stands, tells the test's server what it found, and after each word
 * what was said to be kept. For the journey that kills the browser meanwhile.
 */
async function runOn(): Promise<void> {
  const store = createDeviceStore();
  const { state, record } = await openAtLast(store);
  const ids = eventsIn(state.value).map(({ id }) => id);
  const drill = drillId('drill');
  const stood = state.value.drills.get(drill)?.shown.at(-1)?.place ?? -1;
  await tell('found', { ids, stood, putBack: store.amiss.value.putBack });
  if (!state.value.drills.has(drill)) {
    const body = { drillId: drill, groupId: WHOLE_CLASS, day: '2026-03-02', drill: SMALL_DRILL };
    await record({ kind: 'begun', body }).kept;
  }
  for (let place = stood + 1; ; place++) {
    const moment = { drillId: drill, part: 'blending', place } as const;
    const said = { cards: ['m=M', 'a=AE', 't=T'] as const, broke: 2, heard: null, child: null };
    const shown = record({ kind: 'shown', body: moment });
    const marked = record({ kind: 'marked', body: { ...moment, ...said } });
    const outcomes = await Promise.all([shown.kept, marked.kept]);
    if (outcomes.every((outcome) => 'kept' in outcome)) {
      void tell('kept', { ids: [...shown.events, ...marked.events].map(({ id }) => id), place });
    }
  }
}

/**
 * Opens the class, tells what was found of it once both copies are in order, and writes more beside it than
 * any record is long: whatever a kill has torn in the files of the database, the next start comes upon it.
 */
async function look(): Promise<void> {
  const store = createDeviceStore();
  const { state } = await openAtLast(store);
  await store.close();
  const beside = await openDB('beside', 1, { upgrade: (db) => void db.createObjectStore('much') });
  await beside.put('much', 'much '.repeat(20_000), 'key');
  beside.close();
  const ids = eventsIn(state.value).map(({ id }) => id);
  await tell('found', { ids, stood: Number.MAX_SAFE_INTEGER, putBack: store.amiss.value.putBack });
}

/** Opens the class; while the store is too slow she tries again, as the app asks her to. */
async function openAtLast(store: DeviceStore): Promise<ClassLog> {
  for (;;) {
    const opened = await openClass(store, classId('class'));
    if (store.trouble.peek()?.code !== 'slow') return opened;
    opened.close();
  }
}

function note(text: string): EventSpec {
  return { kind: 'noted', body: { drillId: null, groupId: WHOLE_CLASS, text } };
}

function tell(what: string, value: unknown): Promise<unknown> {
  return fetch(`/${what}`, { method: 'POST', body: JSON.stringify(value) });
}
