import { WebSocket } from 'ws';
import { type ClassId, classId } from '../../core/ids.ts';
import type { LogEvent } from '../../core/log/event.ts';
import type { EventStore } from '../../core/log/event-store.ts';
import { NOTHING } from '../../core/sharing/follower.ts';
import type { Role } from '../../core/sharing/role.ts';
import { makeKeys } from '../../web/device/far/cipher.ts';
import { type FarClassSpec, openFarClass } from '../../web/device/far/far-class.ts';
import type { Socket } from '../../web/device/far/far-line.ts';
import type { FarClass } from '../../web/device/far/far-state.ts';
import { type OpenedInvitation, openInvitation } from '../../web/device/far/invitation.ts';
import type { Ledger, LedgerNoted } from '../../web/device/far/ledger.ts';
import { type OwnDevice, ownDevice } from '../../web/device/far/own-device.ts';
import { packClass } from '../../web/device/far/pack-class.ts';
import { openPollingSocket } from '../../web/device/far/polling-socket.ts';
import { createSharedClass, type SharedClass } from '../../web/device/far/shared-class.ts';
import { visitClass } from '../../web/device/far/visit-class.ts';
import { createMemoryStore } from '../../web/device/log/memory-store.ts';
import { RawDevice } from './raw-device.ts';

let lastId = 0;
export const newId = (): string => `made-${process.pid}-${lastId++}`;

/** The id of a class that was not there before. */
export const newClass = (): ClassId => classId(newId());

/** A ledger in memory, which stays when the class is closed and opened again. */
function createMemoryLedger(): Ledger {
  let noted: LedgerNoted = {
    followed: NOTHING,
    rights: [],
    unsent: [],
    aside: new Map(),
    seen: {},
  };
  return {
    read: async () => noted,
    async noteFollowed(followed, rights, seen) {
      noted = { ...noted, followed, rights, seen };
    },
    async noteAside(aside) {
      noted = { ...noted, aside, unsent: noted.unsent.filter((id) => !aside.has(id)) };
    },
    async noteUnsent(events) {
      const ids = events.map(({ id }) => id);
      noted = { ...noted, unsent: [...new Set([...noted.unsent, ...ids])] };
    },
    async noteSent(ids) {
      const sent = new Set(ids);
      noted = { ...noted, unsent: noted.unsent.filter((id) => !sent.has(id)) };
    },
  };
}

/** A whole device on one class, as the app would be: a store, a ledger, keys, a server. */
export class FarDevice {
  readonly store: EventStore = createMemoryStore();
  readonly ledger = createMemoryLedger();
  readonly own: OwnDevice;
  /** How many signs the server has sent to it. */
  heard = 0;
  /** Whether its network lets no WebSocket through. */
  polls = false;
  /** How far its clock is wrong, in milliseconds. */
  wrongBy = 0;
  /** How often it was told that the server holds something erased. */
  toldErased = 0;
  /** What it does with what is said live. */
  hears: Pick<FarClassSpec, 'onLive' | 'onSealed'> = {};
  readonly classId: ClassId;
  readonly #port: () => number;
  #founder: string;
  readonly #invitation: OpenedInvitation | null;
  #shared: SharedClass | null = null;
  #far: FarClass | null = null;

  private constructor(
    own: OwnDevice,
    classId: ClassId,
    port: () => number,
    invitation: OpenedInvitation | null,
  ) {
    this.own = own;
    this.classId = classId;
    this.#port = port;
    this.#invitation = invitation;
    this.#founder = invitation?.founder ?? own.id;
  }

  /** The device that shares a class first. */
  static async begin(port: () => number, classId: ClassId, pass: string): Promise<FarDevice> {
    const own = await ownDevice(await makeKeys(false), newId());
    const device = new FarDevice(own, classId, port, null);
    await device.open();
    await device.#sayAtLast(async () => [await device.shared.found()], pass);
    await device.far.settled();
    return device;
  }

  /** Another device, let in by this one. */
  async letIn(role: Role): Promise<FarDevice> {
    const opened = await this.invite(role);
    const own = await ownDevice(await makeKeys(false), newId());
    const device = new FarDevice(own, this.classId, this.#port, opened);
    await device.open();
    await device.#sayAtLast(async () => [await device.shared.comeIn(opened)]);
    await device.far.settled();
    return device;
  }

  /** An invitation by this device, as whoever has its secret opens it. */
  async invite(role: Role): Promise<OpenedInvitation> {
    const until = this.far.now() + 600_000;
    const { record, id, box, secret } = await this.shared.invite(role, until);
    await this.#sayAtLast(async () => [record]);
    const raw = await RawDevice.connect(this.#port(), this.own);
    await raw.deposit(this.classId, id, box);
    const opened = await openInvitation(secret, (await raw.fetch(id)) ?? '');
    raw.close();
    if (!opened) throw new Error('The invitation does not open.');
    return opened;
  }

  /** A device with keys of its own that this one has seen, let in by them alone. */
  async letInByKeys(role: Role): Promise<FarDevice> {
    const own = await ownDevice(await makeKeys(false), newId());
    const device = new FarDevice(own, this.classId, this.#port, null);
    device.#founder = this.#founder;
    await this.#sayAtLast(async () => [await this.shared.letIn(own, role)]);
    await device.open();
    await device.far.settled();
    return device;
  }

  get far(): FarClass {
    if (!this.#far) throw new Error('The class is closed.');
    return this.#far;
  }

  get shared(): SharedClass {
    if (!this.#shared) throw new Error('The class is closed.');
    return this.#shared;
  }

  /** Opens the class again, as after a new start of the app. */
  async open(): Promise<void> {
    this.#far = await openFarClass({
      ...this.#spec(),
      onLive: (from, value) => this.hears.onLive?.(from, value),
      onSealed: (from, body) => this.hears.onSealed?.(from, body),
    });
  }

  /** Looks in on the class while it is closed here, until `whenOpened`; tells whether the server was in reach. */
  visit(whenOpened: Promise<unknown> = new Promise(() => {})): Promise<boolean> {
    const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, Math.min(ms, 300)));
    return visitClass({ ...this.#spec(), whenOpened, pause });
  }

  /** Puts what lies in small records into large ones; how many the server let go. */
  pack(): Promise<number> {
    return packClass({
      classId: this.classId,
      own: this.own,
      shared: this.#nothingRead(),
      connect: () => this.connect(),
      now: Date.now,
      newId,
      wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
    });
  }

  /** Records events, as the class log does: kept here first, then sent. */
  async record(events: readonly LogEvent[]): Promise<void> {
    const outcome = await this.store.append(events);
    if ('error' in outcome) throw new Error(outcome.error.code);
    await this.ledger.noteUnsent(events);
    await this.far.send(events);
  }

  async events(): Promise<readonly LogEvent[]> {
    const read = await this.store.eventsOf(this.classId);
    return 'events' in read ? read.events : [];
  }

  /** Resolves when the device has so many events. */
  async until(count: number): Promise<void> {
    while ((await this.events()).length < count) await new Promise((r) => setTimeout(r, 5));
  }

  close(): void {
    this.#far?.close();
    this.#far = null;
  }

  #spec() {
    const { own, classId, ledger, store } = this;
    return {
      classId,
      own,
      ledger,
      store,
      createShared: () => {
        this.#shared = this.#nothingRead();
        return this.#shared;
      },
      connect: () => this.connect(),
      onErased: () => {
        this.toldErased += 1;
      },
      stamping: { device: own.by, now: () => Date.now() + this.wrongBy, newId },
      wait: (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, Math.min(ms, 100))),
    };
  }

  #nothingRead(): SharedClass {
    const [founder, invitation] = [this.#founder, this.#invitation];
    return createSharedClass({ classId: this.classId, own: this.own, founder, invitation, newId });
  }

  /** A line of this device's network to the server. */
  connect(): Socket {
    const address = `127.0.0.1:${this.#port()}/v1`;
    if (this.polls) return openPollingSocket(`http://${address}`);
    const socket = new WebSocket(`ws://${address}`);
    socket.on('message', (data) => {
      this.heard += String(data).length;
    });
    return socket as unknown as Socket;
  }

  async #sayAtLast(
    records: () => Promise<Parameters<FarClass['say']>[0]>,
    pass?: string,
  ): Promise<void> {
    const made = await records();
    while (!('kept' in (await this.far.say(made, pass))))
      await new Promise((r) => setTimeout(r, 20));
  }
}
