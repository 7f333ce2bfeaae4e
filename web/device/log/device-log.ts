import { type ReadonlySignal, signal } from '@preact/signals';
import { type Announcing, announce } from './announce.ts';
import { type ClassLog, openClassLog } from './class-log.ts';
import { createFileDrawer } from './file-drawer.ts';
import { deviceId, newId } from './ids.ts';
import { createIndexedStore } from './indexed-store.ts';
import { withSecondCopy } from './second-copy.ts';
import type { Stamping } from './stamping.ts';
import { keepGoing, type SteadyStore } from './steady-store.ts';

/** Where the classes on this device are kept. */
export type DeviceStore = SteadyStore &
  Announcing & {
    /** Whether the browser had lost all of it and it came back from the second copy. */
    readonly cameBack: ReadonlySignal<boolean>;
  };

/** The classes on this device. Make one of these for the whole app. */
export function createDeviceStore(): DeviceStore {
  const cameBack = signal(false);
  const copied = withSecondCopy(createIndexedStore(), {
    drawer: createFileDrawer(),
    session: newId(),
    onPutBack: () => {
      cameBack.value = true;
    },
  });
  return { ...announce(keepGoing(copied)), cameBack };
}

/** How this device stamps what happens, by its own clock. */
export function ownStamping(): Stamping {
  return { device: deviceId(), now: Date.now, newId };
}

/** Opens a class on this device. */
export function openClass(store: DeviceStore, classId: string): Promise<ClassLog> {
  return openClassLog({ store, classId, ...ownStamping() });
}
