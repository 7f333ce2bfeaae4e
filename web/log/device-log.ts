import { type Announcing, announce } from './announce.ts';
import { createCacheDrawer } from './cache-drawer.ts';
import { type ClassLog, openClassLog } from './class-log.ts';
import { deviceId, newId } from './ids.ts';
import { createIndexedStore } from './indexed-store.ts';
import { withSecondCopy } from './second-copy.ts';
import { keepGoing, type SteadyStore } from './steady-store.ts';

/** Where the classes on this device are kept. */
export type DeviceStore = SteadyStore & Announcing;

/** The classes on this device. Make one of these for the whole app. */
export function createDeviceStore(): DeviceStore {
  return announce(keepGoing(withSecondCopy(createIndexedStore(), createCacheDrawer(), newId())));
}

/** Opens a class on this device, by this device's clock. */
export function openClass(store: DeviceStore, classId: string): Promise<ClassLog> {
  return openClassLog({ store, classId, device: deviceId(), now: Date.now, newId });
}
