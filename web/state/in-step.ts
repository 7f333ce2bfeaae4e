import { type ClassId, isClassId } from '../../core/ids.ts';
import { isListOf, isObject, isShape, isText } from '../../core/log/is-value.ts';
import type { Rights } from '../../core/sharing/rights.ts';
import { mayLead } from '../../core/sharing/role.ts';
import { openBridge, turnsWarmUp } from '../device/far/bridge.ts';
import { openFarClass } from '../device/far/far-class.ts';
import type { FarClass } from '../device/far/far-state.ts';
import { createKeptLedger } from '../device/far/kept-ledger.ts';
import { ownDevice } from '../device/far/own-device.ts';
import { packClass } from '../device/far/pack-class.ts';
import { createSharedClass } from '../device/far/shared-class.ts';
import { createSockets } from '../device/far/sockets.ts';
import { createWalls } from '../device/far/walls.ts';
import { openLink } from '../device/link.ts';
import { ownStamping } from '../device/log/device-log.ts';
import { newId } from '../device/log/ids.ts';
import type { SharedRecord } from '../device/log/shared-record.ts';
import { shelf } from '../device/shelf.ts';
import { store } from './open-class.ts';
import type { InStep, Sharing } from './sharing.ts';

type Message =
  | { readonly kind: 'ask'; readonly classId: ClassId }
  | { readonly kind: 'now'; readonly now: Sharing };

function isMessage(value: unknown): value is Message {
  if (!isObject(value)) return false;
  return value.kind === 'ask'
    ? isClassId(value.classId)
    : value.kind === 'now' && isSharing(value.now);
}

/** As far as another build may have it otherwise; its parts are read by those who show them. */
const isSharing = isShape<Pick<Sharing, 'classId' | 'device' | 'present'>>({
  classId: isClassId,
  device: isText,
  present: isListOf(isText),
});

/** Where the app and its server are. */
export const HERE = new URL('.', location.href).href;

/** A line to the server, by whichever way its network lets through. */
export const connect = createSockets(`${HERE}v1`);

/**
 * Keeps a shared class in step in one window of this browser; the others hear from it how it stands. A lock
 * of the browser says which, and goes on to another when the window is closed.
 */
export function beginInStep(record: SharedRecord, tell: (now: Sharing) => void): InStep {
  const { classId } = record;
  const name = lockOf(classId);
  let isOver = false;
  let far: Promise<FarClass> | null = null;
  let letGo: (() => void) | null = null;
  let last: Sharing | null = null;
  const link = openLink<Message>('sweepline.sharing', isMessage, (message) => {
    if (isOver) return;
    if (message.kind === 'ask') {
      if (far && last && message.classId === classId) link.send({ kind: 'now', now: last });
    } else if (message.now.classId === classId && far === null) tell(message.now);
  });
  link.send({ kind: 'ask', classId });
  void hold(false);
  return {
    lead: async () => {
      if (far === null) await new Promise<void>((resolve) => void hold(true, resolve));
      if (far === null) throw new Error('Another window took over at the same moment.');
      return far;
    },
    stop() {
      isOver = true;
      link.close();
      letGo?.();
    },
  };

  async function hold(steal: boolean, whenHeld?: () => void): Promise<void> {
    const held: { own: Promise<FarClass> | null } = { own: null };
    try {
      await navigator.locks.request(name, { steal }, async () => {
        if (isOver) return;
        const own = speak();
        held.own = own;
        far = own;
        whenHeld?.();
        await Promise.all([
          own,
          new Promise<void>((resolve) => {
            letGo = resolve;
          }),
        ]);
      });
    } catch {
      // Another window has taken over, or this one again; it waits its turn again.
      if (!isOver) void wait(PAUSE).then(() => hold(false));
    }
    if (far === held.own) far = null;
    (await held.own?.catch(() => null))?.close();
  }

  async function speak(): Promise<FarClass> {
    const own = await ownDevice(record.keys, record.by);
    const { founder, invitation } = record;
    const ledger = createKeptLedger(store.shared, classId);
    const createShared = () => createSharedClass({ classId, own, founder, invitation, newId });
    let early: Parameters<FarClass['send']>[0] = [];
    let opened: FarClass | null = null;
    const stop = store.onRecorded((events) => {
      const ours = events.filter((event) => event.classId === classId);
      if (opened) void opened.send(ours);
      else early = [...early, ...ours];
    });
    let packing: ReturnType<typeof setTimeout> | undefined;
    const present = new Set<string>();
    const walls = createWalls({
      classId,
      me: own.id,
      rights: () => opened?.shared().rights() ?? null,
      secretOf: async (drillId) => opened?.shared().wallSecret(drillId) ?? null,
      sayTo: (to, body) => opened?.sayTo(to, body),
      now: () => opened?.now() ?? Date.now(),
    });
    const mayTurn = (from: string) => {
      const member = opened?.shared().rights()?.members.get(from);
      return member === undefined || mayLead(member.role);
    };
    const bridge = openBridge((value) => {
      void opened?.sayLive(value);
      walls.say(value);
    });
    const pack = async ({ shared, state }: FarClass) => {
      const role = shared().rights()?.members.get(own.id)?.role;
      const last = Number(shelf.read(packedAt(classId)) ?? 0);
      const isDue = Date.now() - last > PACK_EVERY;
      if (!isDue || role !== 'owner' || state().where !== 'everywhere') return;
      const mine = packing;
      const spec = { classId, own, shared: createShared(), connect, now: Date.now, newId, wait };
      const done = await packClass(spec).catch(() => null);
      // Where the line ended before, or more was erased meanwhile, it is done another time.
      if (done !== null && packing === mine) shelf.write(packedAt(classId), `${Date.now()}`);
    };
    const say = () => {
      if (!opened || isOver) return;
      const rights: Rights | null = opened.shared().rights();
      const [state, seen] = [opened.state(), opened.seen()];
      last = { classId, device: own.id, state, rights, seen, present: [...present] };
      tell(last);
      link.send({ kind: 'now', now: last });
    };
    opened = await openFarClass({
      classId,
      own,
      ledger,
      createShared,
      store: { append: store.receive, eventsOf: store.eventsOf, remove: store.remove },
      connect,
      stamping: ownStamping(record.by),
      wait,
      onChange: () => queueMicrotask(say),
      onLive(from, value) {
        const before = present.size;
        if (value === null) present.delete(from);
        else present.add(from);
        if (value === 'here') walls.met(from);
        else if (!turnsWarmUp(value) || mayTurn(from)) bridge.hear(from, value);
        if (value === null) walls.left(from);
        if (present.size !== before) say();
      },
      onSealed: (from, body) =>
        void walls.hear(from, body).then((value) => value && bridge.hear(from, value)),
      // What lies at the server is taken out by one of the owner's devices, each of them after its own time.
      onErased() {
        shelf.remove(packedAt(classId));
        clearTimeout(packing);
        packing = setTimeout(() => opened && void pack(opened), CLEAR_AFTER * (1 + Math.random()));
      },
      onReached: () => queueMicrotask(bridge.reached),
    });
    void opened.send(early);
    packing ??= setTimeout(() => opened && void pack(opened), PACK_AFTER);
    say();
    const { close } = opened;
    return {
      ...opened,
      close() {
        stop();
        clearTimeout(packing);
        for (const from of present) bridge.hear(from, null);
        bridge.close();
        close();
      },
    };
  }
}

/** The browser's lock on speaking for a class to its server. */
export const lockOf = (classId: ClassId): string => `sweepline.in-step.${classId}`;

/** Where the shelf has when the small records of a class were put together last. */
export const packedAt = (classId: ClassId): string => `packed.${classId}`;

/** A class has been open for so long before its small records are looked at, in milliseconds. */
const PACK_AFTER = 5 * 60 * 1000;

/** And again after so long. */
const PACK_EVERY = 7 * 24 * 60 * 60 * 1000;

/** Something was erased so long ago, before what lies at the server is taken out, in milliseconds. */
const CLEAR_AFTER = 2000;

/** Before a window waits its turn again, in milliseconds. */
const PAUSE = 500;

/** Waits so long, up to a fifth longer by chance, or until the network is back or she looks here again. */
export function wait(milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    const done = () => {
      clearTimeout(timer);
      removeEventListener('online', done);
      document.removeEventListener('visibilitychange', done);
      resolve();
    };
    const timer = setTimeout(done, milliseconds * (1 + Math.random() / 5));
    addEventListener('online', done);
    document.addEventListener('visibilitychange', done);
  });
}
