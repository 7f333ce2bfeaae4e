import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore } from '../../../core/log/event-store.ts';
import { type Followed, goOn, takeBatch } from '../../../core/sharing/follower.ts';
import type { ServerMessage } from '../../../core/sharing/message.ts';
import {
  addTo,
  EMPTY,
  type Outbox,
  sendNext,
  whenKept,
  whenLater,
  whenLost,
  whenRefused,
  whenSeen,
} from '../../../core/sharing/outbox.ts';
import type { ClassRecord, KeptRecord } from '../../../core/sharing/record.ts';
import { LANES, laneOf } from '../../../core/sharing/role.ts';
import { datingsOf, type Stamping } from '../log/stamping.ts';
import { toText, utf8 } from './bytes.ts';
import { type FarLine, openLine, type Socket } from './far-line.ts';
import type { Ledger } from './ledger.ts';
import type { OwnDevice } from './own-device.ts';
import type { SharedClass } from './shared-class.ts';

/** A shared class kept in step with a server. */
export interface FarClass {
  /** Where what was recorded here is by now. */
  readonly state: () => FarState;
  /** Sends events that were recorded here. */
  send(events: readonly LogEvent[]): Promise<void>;
  /** Has records on the lane of rights kept; resolves to whether they are. */
  say(records: readonly ClassRecord[], pass?: string): Promise<boolean>;
  /** Resolves when everything here is with the server, and everything there is here. */
  settled(): Promise<void>;
  close(): void;
}

/**
 * Where it is: `here` alone, `on-its-way`, or `everywhere` her other devices can get it; `closed` with
 * why, when this device is no longer in the class.
 */
export interface FarState {
  readonly where: 'here' | 'on-its-way' | 'everywhere' | 'closed';
  readonly why: string | null;
  /** What the server or this device did not take, and why. */
  readonly aside: ReadonlyMap<string, string>;
}

/** What being in step needs. */
export interface FarClassSpec {
  readonly classId: string;
  /** The class with nothing read yet. */
  readonly createShared: () => SharedClass;
  readonly own: OwnDevice;
  readonly ledger: Ledger;
  /** Where the events of the class are kept; what comes from afar is added there. */
  readonly store: Pick<EventStore, 'append' | 'eventsOf'>;
  readonly connect: () => Socket;
  readonly stamping: Stamping;
  /** Waits before it connects again, so many milliseconds or more. */
  readonly wait: (ms: number) => Promise<void>;
}

/** So many events go into one record. */
const TOGETHER = 512;

/** So far clocks may differ before times are set right, in milliseconds. */
const LENIENCE = 2 * 60 * 1000;

/** Keeps a class in step until it is closed; connects again as often as the line ends. */
export async function openFarClass(spec: FarClassSpec): Promise<FarClass> {
  const { classId, createShared, own, ledger, store, connect, stamping, wait } = spec;
  const { now } = stamping;
  let shared = createShared();
  const noted = await ledger.read();
  let followed: Followed = noted.followed;
  let rights: readonly KeptRecord[] = [];
  let outbox: Outbox = EMPTY;
  const events = new Map<string, LogEvent>();
  const writers = new Map<string, string>();
  const flying = new Map<string, readonly string[]>();
  const aside = new Map<string, string>();
  let line: FarLine | null = null;
  let head = 0;
  let why: string | null = null;
  let isClosed = false;
  let count = 0;
  let k = 0;
  let isFollowing = false;
  let sealedIn = 0;
  let work: Promise<unknown> = Promise.resolve();
  const answers = new Map<number, (isKept: boolean) => void>();
  const settling = new Set<() => void>();

  for (const record of noted.rights) await shared.take(record, () => undefined);
  ({ rights } = noted);
  const here = await store.eventsOf(classId);
  if ('events' in here) {
    for (const event of here.events) writers.set(event.id, event.by);
    const unsent = new Set(noted.unsent);
    await enqueue(here.events.filter(({ id }) => unsent.has(id)));
  }
  void stayConnected();

  return {
    state: () => ({ where: where(), why, aside: new Map([...outbox.aside, ...aside]) }),
    async send(fresh) {
      await ledger.noteUnsent(fresh);
      await enqueue(fresh);
      await inTurn(flush);
    },
    say(records, pass) {
      return new Promise((resolve) => {
        if (line === null) return resolve(false);
        answers.set(++k, resolve);
        line.send({ t: 'append', k, c: classId, records, ...(pass === undefined ? {} : { pass }) });
      });
    },
    settled: () =>
      new Promise((resolve) => {
        settling.add(resolve);
        tellSettled();
      }),
    close() {
      isClosed = true;
      line?.close();
    },
  };

  function where(): FarState['where'] {
    if (why !== null) return 'closed';
    if (outbox.flying !== null) return 'on-its-way';
    if (outbox.waiting.length > 0) return line === null ? 'here' : 'on-its-way';
    return isFollowing && followed.cursor >= head ? 'everywhere' : 'here';
  }

  function tellSettled(): void {
    if (where() !== 'everywhere' && where() !== 'closed') return;
    for (const done of settling) done();
    settling.clear();
  }

  function inTurn<Value>(what: () => Promise<Value>): Promise<Value> {
    const done = work.then(what);
    work = done.catch(() => line?.close());
    return done;
  }

  async function stayConnected(): Promise<void> {
    for (let tries = 0; !isClosed && why === null; tries++) {
      try {
        let end: () => void = () => {};
        const ended = new Promise<void>((resolve) => {
          end = resolve;
        });
        line = await openLine(connect(), own, now, {
          onMessage: (message) => void inTurn(() => take(message)).catch(() => {}),
          onEnd: () => end(),
        });
        tries = 0;
        follow();
        await ended;
      } catch {
        // The server cannot be reached; it is tried again.
      }
      line = null;
      isFollowing = false;
      outbox = whenLost(outbox);
      flying.clear();
      for (const answer of answers.values()) answer(false);
      answers.clear();
      if (!isClosed && why === null) await wait(Math.min(30_000, 500 * 2 ** Math.min(tries, 6)));
    }
    tellSettled();
  }

  function follow(): void {
    line?.send({ t: 'follow', c: classId, after: followed.cursor });
  }

  async function take(message: ServerMessage): Promise<void> {
    if (message.t === 'following') await begin(message);
    else if (message.t === 'records') await takeRecords(message);
    else if (message.t === 'closed') {
      // Before this device has come in, nothing can be followed; that is no end.
      if (message.why === 'removed' || message.why === 'gone') why = message.why;
    } else if (message.t === 'kept') {
      head = Math.max(head, ...message.seqs);
      if (answers.has(message.k) && !isFollowing) follow();
      answers.get(message.k)?.(true);
      answers.delete(message.k);
      const sent = outbox.flying?.k === message.k ? outbox.flying.ids : [];
      outbox = whenKept(outbox, message.k);
      await ledger.noteSent(sent);
    } else if (message.t === 'refused') {
      answers.get(message.k)?.(false);
      answers.delete(message.k);
      const wrong = flying.get(message.id ?? '') ?? outbox.flying?.ids ?? [];
      outbox = whenRefused(outbox, message.k, wrong, message.why);
      // The new epoch's record is on its way; with it all is sealed anew.
      if (message.why === 'old-epoch' && shared.rights()?.epoch === sealedIn) return;
    } else if (message.t === 'later') {
      outbox = whenLater(outbox, message.k, now() + message.ms);
      void wait(message.ms).then(() => inTurn(flush));
    }
    await flush();
  }

  /** The server may have lost what this device knows: then all of it is read and sent anew. */
  async function begin(message: ServerMessage & { readonly t: 'following' }): Promise<void> {
    ({ head } = message);
    isFollowing = true;
    const next = goOn(followed, message);
    followed = next.followed;
    if (!next.anew) return;
    sayAgain(rights);
    shared = createShared();
    rights = [];
    const all = await store.eventsOf(classId);
    if ('events' in all) {
      await ledger.noteUnsent(all.events);
      outbox = EMPTY;
      await enqueue(all.events);
    }
    follow();
  }

  /** Rights are as good from anyone, since they are signed; the server takes those that it has not. */
  function sayAgain(records: readonly KeptRecord[]): void {
    for (const { seq: _, at: __, ...record } of records) {
      line?.send({ t: 'append', k: ++k, c: classId, records: [record] });
    }
  }

  async function takeRecords(message: ServerMessage & { readonly t: 'records' }): Promise<void> {
    const batch = takeBatch(followed, message);
    if (batch === null) throw new Error('Something is missing between what is here and what came.');
    const fresh: LogEvent[] = [];
    const said: KeptRecord[] = [];
    for (const record of batch.fresh) {
      for (const one of await shared.take(record, (event) => writers.get(event))) {
        if (one.kind === 'aside') aside.set(`${one.seq}`, one.why);
        else {
          fresh.push(...one.admitted.events);
          for (const { event, why: reason } of one.admitted.aside) aside.set(event.id, reason);
        }
      }
      if (record.lane === 'rights') said.push(record);
    }
    const unknown = fresh.filter(({ id }) => !writers.has(id));
    if (unknown.length > 0) {
      const outcome = await store.append(unknown);
      if ('error' in outcome) throw new Error('What came cannot be kept here.');
    }
    for (const { id, by } of fresh) writers.set(id, by);
    const ids = fresh.map(({ id }) => id);
    outbox = whenSeen(outbox, ids);
    await ledger.noteSent(ids);
    followed = batch.followed;
    head = Math.max(head, message.head);
    rights = [...rights, ...said];
    // What waits for its keys is asked for again after a new start.
    const from = shared.waitingFrom();
    const cursor = from === null ? followed.cursor : Math.min(followed.cursor, from - 1);
    await ledger.noteFollowed(
      { ...followed, cursor },
      rights.filter(({ seq }) => seq <= cursor),
    );
    if (shared.rights()?.gone) why = 'gone';
  }

  async function enqueue(fresh: readonly LogEvent[]): Promise<void> {
    for (const event of fresh) {
      if (!events.has(event.id)) events.set(event.id, event);
      writers.set(event.id, event.by);
    }
    outbox = addTo(
      outbox,
      fresh.map(({ id }) => id),
    );
  }

  /** Sends the next, sealed by now. */
  async function flush(): Promise<void> {
    const isMember = shared.rights()?.members.get(own.id)?.removed === false;
    const next = line !== null && isMember ? sendNext(outbox, TOGETHER, k + 1, now()) : null;
    if (next?.flying) {
      k += 1;
      outbox = next;
      sealedIn = shared.rights()?.epoch ?? 0;
      flying.clear();
      const records = await sealedByLane(next.flying.ids.flatMap((id) => events.get(id) ?? []));
      if (records.length === 0) outbox = whenRefused(outbox, k, next.flying.ids, 'not-allowed');
      else line?.send({ t: 'append', k, c: classId, records });
    }
    tellSettled();
  }

  /** A record for each lane, with what must be said of times that lie ahead of the server's clock. */
  async function sealedByLane(sent: readonly LogEvent[]): Promise<readonly ClassRecord[]> {
    const records: ClassRecord[] = [];
    for (const lane of LANES) {
      const ofLane = sent.filter(({ kind }) => laneOf(kind) === lane);
      if (ofLane.length === 0) continue;
      const id = await recordIdOf(ofLane);
      const record = await shared.sealed(lane, id, ++count, [
        ...ofLane,
        ...(await setRight(ofLane)),
      ]);
      if (record === null) continue;
      records.push(record);
      flying.set(
        id,
        ofLane.map((event) => event.id),
      );
    }
    return records;
  }

  /** What this device's clock stamped ahead of the server's is said to have been now, here too. */
  async function setRight(sent: readonly LogEvent[]): Promise<readonly LogEvent[]> {
    const there = Math.floor(now() + (line?.ahead ?? 0));
    const ahead = sent.filter(({ at }) => at > there + LENIENCE);
    if (ahead.length === 0) return [];
    const right = ahead.map(({ id }) => ({ event: id, at: there }));
    const said = datingsOf(right, classId, { ...stamping, now: () => there });
    for (const event of said) writers.set(event.id, event.by);
    await store.append(said);
    return said;
  }
}

/** The same for the same events, so that what is sent twice is known again. */
async function recordIdOf(events: readonly LogEvent[]): Promise<string> {
  const text = utf8(events.map(({ id }) => id).join('\n'));
  return toText(new Uint8Array(await crypto.subtle.digest('SHA-256', text)).subarray(0, 16));
}
