import type { ClassId, EventId } from '../../../core/ids.ts';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore, StoreError } from '../../../core/log/event-store.ts';
import { NOTHING, takeBatch } from '../../../core/sharing/follower.ts';
import type { DeviceMessage, ServerMessage } from '../../../core/sharing/message.ts';
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
import { type Rights, staying } from '../../../core/sharing/rights.ts';
import type { Stamping } from '../log/stamping.ts';
import { type FarLine, openLine, type Socket } from './far-line.ts';
import type { FarClass, FarState } from './far-state.ts';
import type { Ledger } from './ledger.ts';
import { createMoment } from './moment.ts';
import type { OwnDevice } from './own-device.ts';
import { createQuestions } from './questions.ts';
import { recordsOf } from './records-of.ts';
import type { SharedClass } from './shared-class.ts';

/** What being in step needs. */
export interface FarClassSpec {
  readonly classId: ClassId;
  /** The class with nothing read yet. */
  readonly createShared: () => SharedClass;
  readonly own: OwnDevice;
  readonly ledger: Ledger;
  /** Where the events of the class are kept; what comes from afar is added there. */
  readonly store: Pick<EventStore, 'append' | 'eventsOf' | 'remove'>;
  readonly connect: () => Socket;
  readonly stamping: Stamping;
  /** Waits before it connects again, so many milliseconds or more. */
  readonly wait: (ms: number) => Promise<void>;
  /** Is told whenever `state` or the rights may be others than before. */
  readonly onChange?: () => void;
  /** Is told what another device says of the moment; of one that is gone, null. */
  readonly onLive?: (from: string, value: unknown) => void;
  /** Is told what another device says that is not sealed for the class: a wall does. */
  readonly onSealed?: (from: string, body: string) => void;
  /** Is told that the server holds something that was erased, which an owner's device is to take out. */
  readonly onErased?: () => void;
  /** Is told that the server was reached, and that others may hear what is said of the moment. */
  readonly onReached?: () => void;
}

/** So many events go into one record. */
const TOGETHER = 512;

/** Asks again after so many milliseconds whether it may follow what the server does not let it follow yet. */
const ASK_AGAIN = 10_000;

/** When a server is full it is asked again after so long, in milliseconds. */
const FULL_FOR = 10 * 60 * 1000;

/** A line that lasted so long was a good one, in milliseconds. */
const GOOD_LINE = 10_000;

/** Keeps a class in step until it is closed; connects again as often as the line ends. */
export async function openFarClass(spec: FarClassSpec): Promise<FarClass> {
  const { classId, createShared, own, ledger, store, connect, stamping, wait } = spec;
  const { onChange, onLive, onSealed, onErased, onReached } = spec;
  const { now } = stamping;
  let shared = createShared();
  // Read before the ledger: then whatever is here and unsent is noted there, and what comes later is told.
  const here = await store.eventsOf(classId);
  const noted = await ledger.read();
  let { followed, rights } = noted;
  let outbox: Outbox = EMPTY;
  const events = new Map<EventId, LogEvent>();
  const writers = new Map<EventId, string>();
  const flying = new Map<string, readonly EventId[]>();
  const aside = new Map<string, string>();
  let line: FarLine | null = null;
  let ahead = 0;
  let head = 0;
  let why: string | null = null;
  let isClosed = false;
  let count = 0;
  let isFollowing = false;
  let sealedIn = 0;
  let work: Promise<unknown> = Promise.resolve();
  let trouble: StoreError | null = null;
  let isFull = false;
  let seen: Readonly<Record<string, number>> = noted.seen;
  // What a server that has lost something is to be given back of rights, and how they were before.
  let owed: readonly ClassRecord[] = [];
  let former: Rights | null = null;
  let isGivingBack = false;
  let pass: string | undefined;
  let needsPass = false;
  const questions = createQuestions((message) => {
    line?.send(message);
    return line !== null;
  }, wait);
  const moment = createMoment({
    classId,
    me: own.id,
    shared: () => shared,
    send: (message) => {
      if (isFollowing) line?.send(message);
    },
    onLive,
    onSealed,
  });
  const settling = new Set<() => void>();
  const reaching = new Map<() => void, number>();

  for (const record of rights) await shared.take(record, () => undefined);
  for (const [id, reason] of noted.aside) aside.set(id, reason);
  let erased: ReadonlySet<string> = ('events' in here && here.erased) || new Set();
  await erase().catch(() => false);
  if ('events' in here) {
    for (const event of here.events) writers.set(event.id, event.by);
    const unsent = new Set(noted.unsent);
    enqueue(here.events.filter(({ id }) => unsent.has(id)));
  }
  void stayConnected();

  return {
    state: () => ({
      where: where(),
      why,
      needsPass,
      aside: new Map([...outbox.aside, ...aside]),
      unsent: outbox.waiting.length + (outbox.flying?.ids.length ?? 0),
      isConnected: line !== null,
      trouble,
      isFull,
    }),
    shared: () => shared,
    seen: () => seen,
    now: () => Math.floor(now() + ahead),
    async send(fresh) {
      enqueue(fresh.filter(({ id }) => !writers.has(id)));
      await inTurn(flush);
    },
    async say(records, withPass) {
      const answer = await questions.ask((number) => appending(number, records, withPass));
      if (answer?.t !== 'kept') return { why: answer?.t === 'refused' ? answer.why : 'lost' };
      const last = Math.max(...answer.seqs);
      if (followed.cursor < last) {
        await new Promise<void>((resolve) => reaching.set(resolve, last));
      }
      return { kept: true };
    },
    sayLive: moment.say,
    sayTo: moment.sayTo,
    shareAgain(given) {
      pass = given;
      needsPass = false;
      void giveBack();
    },
    ask: questions.ask,
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
    return isFollowing && !isBehind() && followed.cursor >= head ? 'everywhere' : 'here';
  }

  /** Whether the server has lost something that it was not given back yet. */
  function isBehind(): boolean {
    return former !== null || owed.length > 0;
  }

  function tellSettled(): void {
    onChange?.();
    if (where() !== 'everywhere' && where() !== 'closed') return;
    for (const done of settling) done();
    settling.clear();
  }

  /** What was said up to this place is read; or the line is gone, and it will be. */
  function tellReached(place: number): void {
    for (const [done, until] of reaching) {
      if (until > place) continue;
      reaching.delete(done);
      done();
    }
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
        if (isClosed) line.close();
        ({ ahead } = line);
        const opened = now();
        onChange?.();
        if (owed.length > 0) void giveBack();
        else follow();
        await ended;
        if (now() - opened > GOOD_LINE) tries = 0;
      } catch {
        // The server cannot be reached; it is tried again.
      }
      line = null;
      isFollowing = false;
      moment.leave();
      outbox = whenLost(outbox);
      flying.clear();
      questions.lost();
      tellReached(Number.POSITIVE_INFINITY);
      onChange?.();
      if (trouble !== null) tries = 6;
      if (!isClosed && why === null) await wait(Math.min(30_000, 500 * 2 ** Math.min(tries, 6)));
    }
    tellSettled();
  }

  function follow(): void {
    line?.send({ t: 'follow', c: classId, after: followed.cursor, trace: followed.trace });
  }

  function appending(number: number, records: readonly ClassRecord[], withPass?: string) {
    const message: DeviceMessage = { t: 'append', k: number, c: classId, records };
    return withPass === undefined ? message : { ...message, pass: withPass };
  }

  async function take(message: ServerMessage): Promise<void> {
    if (questions.answer(message)) {
      if (message.t !== 'kept') return tellSettled();
      head = Math.max(head, ...message.seqs);
      if (!isFollowing && !isBehind()) follow();
    }
    if (message.t === 'following') {
      ({ head } = message);
      isFollowing = message.knows;
      if (!message.knows) await startOver();
      else {
        await whenCaughtUp();
        moment.enter();
        onReached?.();
      }
    } else if (message.t === 'live' || message.t === 'here' || message.t === 'left') {
      return moment.hear(message);
    } else if (message.t === 'records') await takeRecords(message);
    else if (message.t === 'closed') await beClosed(message);
    else if (message.t === 'kept') {
      isFull = false;
      head = Math.max(head, ...message.seqs);
      const sent = outbox.flying?.k === message.k ? outbox.flying.ids : [];
      outbox = whenKept(outbox, message.k);
      await ledger.noteSent(sent);
    } else if (message.t === 'refused' && message.why === 'full') {
      isFull = true;
      outbox = whenLater(outbox, message.k, now() + FULL_FOR);
      void wait(FULL_FOR).then(() => inTurn(flush));
    } else if (message.t === 'refused') {
      const wrong = flying.get(message.id ?? '') ?? outbox.flying?.ids ?? [];
      outbox = whenRefused(outbox, message.k, wrong, message.why);
      // The new epoch's record is on its way; with it all is sealed again.
      if (message.why === 'old-epoch' && shared.rights()?.epoch === sealedIn) return;
      await ledger.noteAside(outbox.aside);
    } else if (message.t === 'later') {
      outbox = whenLater(outbox, message.k, now() + message.ms);
      void wait(message.ms).then(() => inTurn(flush));
    }
    await flush();
  }

  async function beClosed(message: ServerMessage & { readonly t: 'closed' }): Promise<void> {
    if (message.why === 'removed' || message.why === 'gone') why = message.why;
    // Before this device has come in, nothing can be followed; that is no end.
    else if (rights.length > 0) await startOver();
    else if (former !== null) {
      void wait(ASK_AGAIN).then(() => (owed.length > 0 ? giveBack() : follow()));
    }
  }

  /**
   * The server has lost something that this device knows, so that all is read and sent again. Rights go
   * first: what was recorded is not sealed again before it is known who reads it. Until all is given back,
   * what was noted stays, so that a device that ends meanwhile begins this again.
   */
  async function startOver(): Promise<void> {
    former ??= shared.rights();
    const known = new Set(owed.map(({ id }) => id));
    owed = [
      ...owed,
      ...rights.map(({ seq: _, at: __, ...record }) => record).filter(({ id }) => !known.has(id)),
    ];
    shared = createShared();
    rights = [];
    followed = NOTHING;
    isFollowing = false;
    const all = await store.eventsOf(classId);
    const again = 'events' in all ? all.events.filter(isForThisDevice) : [];
    await ledger.noteUnsent(again);
    outbox = EMPTY;
    enqueue(again);
    void giveBack();
  }

  /** Whether this device is the one to send an event again: it would not be taken from others. */
  function isForThisDevice({ by }: LogEvent): boolean {
    const role = former?.members.get(own.id)?.role;
    return role === 'owner' || role === 'teacher' || (role === 'aide' && by === own.by);
  }

  /** Says one record of what is owed after the other, then follows. They are as good from anyone. */
  async function giveBack(): Promise<void> {
    if (isGivingBack) return;
    isGivingBack = true;
    while (owed[0]) {
      const record = owed[0];
      const answer = await questions.ask((number) => appending(number, [record], pass));
      if (answer?.t === 'refused' && (answer.why === 'pass' || answer.why === 'no-class')) {
        needsPass = true;
        void wait(ASK_AGAIN).then(giveBack);
        break;
      } else if (answer === null) break;
      else owed = owed.slice(1);
    }
    isGivingBack = false;
    if (owed.length > 0) return;
    needsPass = false;
    follow();
  }

  /** What could not be given back, since it had its time, an owner says again: who is in the class. */
  async function whenCaughtUp(): Promise<void> {
    if (former === null || owed.length > 0 || followed.cursor < head) return;
    const now = shared.rights();
    if (now?.members.get(own.id)?.role === 'owner') {
      const missing = staying(former).filter(({ id }) => !now.members.has(id));
      owed = await Promise.all(missing.map((one) => shared.letIn(one, one.role)));
    }
    former = null;
    if (owed.length > 0) void giveBack();
  }

  async function takeRecords(message: ServerMessage & { readonly t: 'records' }): Promise<void> {
    const batch = takeBatch(followed, message);
    if (batch === null) throw new Error('Something is missing between what is here and what came.');
    const fresh: LogEvent[] = [];
    const said: KeptRecord[] = [];
    let holdsErased = false;
    for (const record of batch.fresh) {
      for (const one of await shared.take(record, (event) => writers.get(event))) {
        if (one.kind === 'aside') aside.set(`${one.seq}`, one.why);
        else {
          holdsErased ||= one.holdsErased;
          fresh.push(...one.admitted.events);
          for (const { event, why: reason } of one.admitted.aside) aside.set(event.id, reason);
        }
      }
      if (record.lane === 'rights') said.push(record);
      else seen = { ...seen, [record.writer]: record.at };
    }
    const unknown = fresh.filter(({ id }) => !writers.has(id));
    if (unknown.length > 0) {
      const outcome = await store.append(unknown);
      trouble = 'error' in outcome ? outcome.error : null;
      if (trouble !== null) throw new Error('What came cannot be kept here.');
    }
    for (const { id, by } of fresh) writers.set(id, by);
    if ((await erase()) || holdsErased) onErased?.();
    const ids = fresh.map(({ id }) => id);
    outbox = whenSeen(outbox, ids);
    await ledger.noteSent(ids);
    ({ followed } = batch);
    head = Math.max(head, message.head);
    rights = [...rights, ...said];
    await whenCaughtUp();
    // What waits for its keys is asked for again after a new start.
    if (!shared.isWaiting() && !isBehind()) await ledger.noteFollowed(followed, rights, seen);
    tellReached(followed.cursor);
    if (shared.rights()?.gone) why = 'gone';
  }

  /** Removes here what was erased since; whether there was anything. */
  async function erase(): Promise<boolean> {
    const all = shared.rights()?.erased ?? new Set();
    if ([...all].every((id) => erased.has(id))) return false;
    const outcome = await store.remove(classId, [...all]);
    // Another window holds the second copy; it is cleared when the class is opened next.
    if ('error' in outcome && outcome.error.code !== 'busy') throw new Error('Not erased here.');
    erased = new Set([...erased, ...all]);
    const gone = erasedWith([...events.values()], all);
    for (const event of events.values()) if (isErased(event, gone)) events.delete(event.id);
    outbox = whenSeen(outbox, [...gone] as EventId[]);
    return true;
  }

  function enqueue(recorded: readonly LogEvent[]): void {
    if (erased.size > 0) erased = erasedWith(recorded, erased);
    const fresh = recorded.filter((event) => !isErased(event, erased));
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
    const maySend = line !== null && isMember && !isBehind();
    const number = questions.nextNumber();
    const next = maySend ? sendNext(outbox, TOGETHER, number, now()) : null;
    if (next?.flying) {
      outbox = next;
      sealedIn = shared.rights()?.epoch ?? 0;
      flying.clear();
      const sent = next.flying.ids.flatMap((id) => events.get(id) ?? []);
      const made = await recordsOf(sent, { classId, shared, stamping, ahead, count });
      ({ count } = made);
      for (const { by, id } of made.datings) writers.set(id, by);
      if (made.datings.length > 0) await store.append(made.datings);
      for (const { record, ids } of made.records) flying.set(record.id, ids);
      const records = made.records.map(({ record }) => record);
      if (records.length === 0) {
        outbox = whenRefused(outbox, number, next.flying.ids, 'not-allowed');
        await ledger.noteAside(outbox.aside);
      } else line?.send(appending(number, records));
    }
    tellSettled();
  }
}
