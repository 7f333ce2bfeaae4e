import { createKeptLedger } from '../device/far/kept-ledger.ts';
import { ownDevice } from '../device/far/own-device.ts';
import { createSharedClass } from '../device/far/shared-class.ts';
import { visitClass } from '../device/far/visit-class.ts';
import { ownStamping } from '../device/log/device-log.ts';
import { newId } from '../device/log/ids.ts';
import type { SharedRecord } from '../device/log/shared-record.ts';
import { shelf } from '../device/shelf.ts';
import { connect, lockOf, packedAt, wait } from './in-step.ts';
import { sharedAs, store } from './open-class.ts';

/**
 * From now on the shared classes that are not open are brought up to date too, one after the other, when the
 * app is opened and now and then afterwards: what was marked in the morning on a phone is with her other
 * devices, whichever class the phone shows now. One window does it, for a class that no window has open.
 */
export async function visitClasses(): Promise<never> {
  for (;;) {
    await navigator.locks.request('sweepline.visiting', { ifAvailable: true }, async (lock) => {
      if (lock !== null) await visitAll();
    });
    const last = Date.now();
    // It waits shorter when the network comes back, or she does.
    do await wait(EVERY);
    while (Date.now() - last < AT_LEAST);
  }
}

async function visitAll(): Promise<void> {
  for (const record of await store.shared.all().catch(() => [])) {
    const isOpenHere = () => sharedAs.peek()?.classId === record.classId;
    if (isOpenHere()) continue;
    const isReached = await navigator.locks
      .request(
        lockOf(record.classId),
        { ifAvailable: true },
        (lock) => lock === null || look(record),
      )
      // Another window has opened the class and taken over.
      .catch(() => true);
    if (!isReached) return;
  }
}

async function look({ classId, keys, by, founder, invitation }: SharedRecord): Promise<boolean> {
  const own = await ownDevice(keys, by);
  let stop: () => void = () => {};
  const whenOpened = new Promise<void>((resolve) => {
    stop = sharedAs.subscribe((open) => {
      if (open?.classId === classId) resolve();
    });
  });
  try {
    return await visitClass({
      classId,
      own,
      ledger: createKeptLedger(store.shared, classId),
      createShared: () => createSharedClass({ classId, own, founder, invitation, newId }),
      store: { append: store.receive, eventsOf: store.eventsOf, remove: store.remove },
      connect,
      stamping: ownStamping(by),
      wait,
      // When it is opened next, an owner's device takes out what lies at the server.
      onErased: () => shelf.remove(packedAt(classId)),
      whenOpened,
      pause: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
    });
  } finally {
    stop();
  }
}

/** So often they are visited, in milliseconds. */
const EVERY = 30 * 60 * 1000;

/** And no oftener than this, however often she comes back. */
const AT_LEAST = 5 * 60 * 1000;
