import { type ReadonlySignal, signal } from '@preact/signals';
import { type Announcing, announce } from './announce.ts';
import { type ClassLog, openClassLog } from './class-log.ts';
import { createFileDrawer } from './file-drawer.ts';
import { deviceId, newId } from './ids.ts';
import { createIndexedStore } from './indexed-store.ts';
import { withPatience } from './patient-store.ts';
import { withSecondCopy } from './second-copy.ts';
import { type SpareStore, withSpare } from './spare-store.ts';
import type { Stamping } from './stamping.ts';
import { keepGoing, type SteadyStore } from './steady-store.ts';

/** Where the classes on this device are kept. */
export type DeviceStore = SteadyStore &
  Announcing &
  Pick<SpareStore, 'inMemory' | 'heldInMemory' | 'workInMemory' | 'leaveMemory'> & {
    /** What was found amiss since the app was opened, when the two copies were united. */
    readonly amiss: ReadonlySignal<Amiss>;
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
  const copied = withSecondCopy(createIndexedStore(), {
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
  const announced = announce(keepGoing(spared));
  return { ...announced, amiss, inMemory, heldInMemory, workInMemory, leaveMemory };
}

/** How this device stamps what happens, by its own clock. */
export function ownStamping(): Stamping {
  return { device: deviceId(), now: Date.now, newId };
}

/** Opens a class on this device. */
export function openClass(store: DeviceStore, classId: string): Promise<ClassLog> {
  return openClassLog({ store, classId, ...ownStamping() });
}
