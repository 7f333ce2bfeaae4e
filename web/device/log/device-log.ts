import { type ReadonlySignal, signal } from '@preact/signals';
import type { ClassId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { type Announcing, announce } from './announce.ts';
import { type ClassLog, openClassLog } from './class-log.ts';
import { connect } from './database.ts';
import { createFileDrawer } from './file-drawer.ts';
import { deviceId, newId } from './ids.ts';
import { createIndexedStore } from './indexed-store.ts';
import { createMemoryStore } from './memory-store.ts';
import { withPatience } from './patient-store.ts';
import { withSecondCopy } from './second-copy.ts';
import { createAsideShelf } from './set-aside.ts';
import type { SharedRecord } from './shared-record.ts';
import { createSharedRecords, type SharedRecords } from './shared-records.ts';
import { type SpareStore, withSpare } from './spare-store.ts';
import type { Stamping } from './stamping.ts';
import { keepGoing, type SteadyStore } from './steady-store.ts';

/** Where the classes on this device are kept. */
export type DeviceStore = SteadyStore &
  Announcing &
  Pick<SpareStore, 'inMemory' | 'heldInMemory' | 'workInMemory' | 'leaveMemory'> & {
    /** What was found amiss since the app was opened, when the two copies were united. */
    readonly amiss: ReadonlySignal<Amiss>;
    /** How this device takes part in shared classes. */
    readonly shared: SharedRecords;
  };

/** How many entries were amiss; see `Found`. */
export interface Amiss {
  readonly putBack: number;
  readonly copied: number;
  readonly damaged: number;
  readonly twofold: number;
}

/** The classes on this device. Make one of these for the whole app. */
export function createDeviceStore(): DeviceStore {
  const amiss = signal<Amiss>({ putBack: 0, copied: 0, damaged: 0, twofold: 0 });
  const connection = connect();
  const copied = withSecondCopy(createIndexedStore(undefined, connection), {
    drawer: createFileDrawer(),
    session: newId(),
    onFound({ lost, putBack, copied, damaged, twofold }) {
      const before = amiss.peek();
      amiss.value = {
        putBack: before.putBack + putBack,
        copied: before.copied + copied,
        damaged: before.damaged + damaged,
        twofold: before.twofold + twofold,
      };
      if (lost.length > 0) announced.tell(lost);
    },
  });
  const { inMemory, heldInMemory, workInMemory, leaveMemory, ...spared } = withSpare(
    withPatience(copied),
  );
  const aside = createAsideShelf(connection);
  const announced = announce(
    keepGoing(spared, (events) => {
      aside.keep(events).catch(() => {
        // Then it is in memory alone, as `aside` of the store says.
      });
    }),
  );
  const shared = createSharedRecords(connection);
  return { ...announced, amiss, shared, inMemory, heldInMemory, workInMemory, leaveMemory };
}

/** How this device stamps what happens, by its own clock; in a shared class by the name it has there. */
export function ownStamping(device = deviceId()): Stamping {
  return { device, now: Date.now, newId };
}

/** A class, open, and how this device shares it; null when it does not. */
export interface OpenedClass extends ClassLog {
  readonly shared: SharedRecord | null;
}

/** Opens a class made of these events, in memory alone: nothing is kept, and no other window is told. */
export async function openInMemory(
  classId: ClassId,
  events: readonly LogEvent[],
): Promise<OpenedClass> {
  const store = keepGoing(createMemoryStore());
  await store.append(events);
  const deaf = () => () => {};
  const alone = {
    ...store,
    subscribe: deaf,
    onRecorded: deaf,
    onRemoved: deaf,
    tell() {},
    receive: store.offer,
  };
  const log = await openClassLog({ store: alone, classId, ...ownStamping() });
  return { ...log, shared: null };
}

/** Opens a class on this device. */
export async function openClass(store: DeviceStore, classId: ClassId): Promise<OpenedClass> {
  let shared: SharedRecord | null = null;
  const reading = inTime(store.shared.of(classId)).then((record) => {
    shared = record;
  });
  const stamping = ownStamping();
  const log = await openClassLog({
    ...stamping,
    store,
    classId,
    get device() {
      return shared?.by ?? stamping.device;
    },
  });
  // Nothing is recorded in a class before it is known who this device is in it.
  await reading;
  return { ...log, shared };
}

/** What comes of a look in the database, or null when it does not answer: then no class does. */
async function inTime<Value>(asked: Promise<Value>): Promise<Value | null> {
  let late: ReturnType<typeof setTimeout> | undefined;
  const tooLate = new Promise<null>((resolve) => {
    late = setTimeout(() => resolve(null), PATIENCE);
  });
  const answer = await Promise.race([asked.catch(() => null), tooLate]);
  clearTimeout(late);
  return answer;
}

/** In milliseconds; the look takes one or two. */
const PATIENCE = 3000;
