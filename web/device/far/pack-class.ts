import type { ClassId, EventId } from '../../../core/ids.ts';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { NOTHING, takeBatch, traceAfter } from '../../../core/sharing/follower.ts';
import type { DeviceMessage, ServerMessage } from '../../../core/sharing/message.ts';
import type { ClassRecord, KeptRecord } from '../../../core/sharing/record.ts';
import { LANES, type Lane } from '../../../core/sharing/role.ts';
import { type FarLine, openLine, type Socket } from './far-line.ts';
import type { OwnDevice } from './own-device.ts';
import type { SharedClass } from './shared-class.ts';

/** What packing needs. */
export interface PackSpec {
  readonly classId: ClassId;
  readonly own: OwnDevice;
  /** The class with nothing read yet. */
  readonly shared: SharedClass;
  readonly connect: () => Socket;
  readonly now: () => number;
  readonly newId: () => string;
  readonly wait: (ms: number) => Promise<void>;
}

/** So many events go into one record. */
const TOGETHER = 1024;

/** A record with fewer events than this is a loose one. */
const LOOSE = 256;

/** With fewer loose records there is no need. */
const WORTH_IT = 64;

/**
 * Puts what lies in many small records of a class into few large ones, so that a new device reads a year in
 * seconds; for an owner's device. Gives how many records the server could let go; 0 when it was not worth
 * it. Rejects when the line ends before; then nothing is lost, and it is done another time.
 *
 * Method: the whole class is read from the server, as a new device reads it; what is in loose records is
 * sent again, a thousand events to a record, and read back from the server. Only when every event came back
 * as it was does the device say that the loose records can go. What it could not read, or set aside, stays. A
 * record that holds something erased goes in any case, and what was erased is not sent again.
 */
export async function packClass(spec: PackSpec): Promise<number> {
  const { classId, own, shared, connect, now, newId } = spec;
  const reading = readServer(spec);
  const line = await openLine(connect(), own, now, reading);
  try {
    line.send({ t: 'follow', c: classId, after: 0, trace: 0 });
    await reading.until(() => reading.isHere());
    const loose = reading.loose();
    if (loose.length < WORTH_IT && !loose.some(({ isToGo }) => isToGo)) return 0;
    for (const lane of LANES) {
      const events = new Map<EventId, LogEvent>();
      for (const record of loose) {
        if (record.lane !== lane) continue;
        for (const event of record.events) if (!events.has(event.id)) events.set(event.id, event);
      }
      const erased = reading.erased();
      const all = [...events.values()].filter((event) => !isErased(event, erased));
      for (let from = 0; from < all.length; from += TOGETHER) {
        const some = all.slice(from, from + TOGETHER);
        const record = await shared.sealed(lane, newId(), 0, some);
        if (record === null) return 0;
        const [seq] = await keep(line, reading, spec, record);
        const back = seq && (await reading.until(() => reading.at(seq)));
        if (!back || JSON.stringify(back.events) !== JSON.stringify(some)) return 0;
      }
    }
    const last = loose.at(-1)?.seq ?? 0;
    await keep(line, reading, spec, await shared.packed(reading.runs(loose), reading.trace(last)));
    return loose.length;
  } finally {
    line.close();
  }
}

interface Opened {
  readonly seq: number;
  readonly lane: Lane;
  readonly events: readonly LogEvent[];
  /** Whether something in it was set aside. */
  readonly hasAside: boolean;
  /** Whether it holds what was erased before it came. */
  readonly holdsErased: boolean;
}

/** What comes from the server, read in order. */
function readServer({ shared, classId }: PackSpec) {
  let followed = NOTHING;
  let head = Number.POSITIVE_INFINITY;
  let work = Promise.resolve();
  let ended: Error | null = null;
  const lanes = new Map<number, Lane>();
  const traces = new Map<number, number>();
  const opened = new Map<number, Opened>();
  const writers = new Map<EventId, string>();
  const answers = new Map<number, ServerMessage>();
  const waiting = new Set<() => void>();
  const wake = () => {
    for (const one of waiting) one();
    waiting.clear();
  };
  const end = (why: string) => {
    ended ??= new Error(why);
    wake();
  };
  return {
    onMessage(message: ServerMessage) {
      work = work
        .then(() => take(message))
        .then(wake)
        .catch((error: Error) => end(error.message));
    },
    onEnd: () => end('The line ended.'),
    isHere: () => followed.cursor >= head,
    at: (seq: number) => opened.get(seq),
    answer: (k: number) => answers.get(k),
    trace: (seq: number) => traces.get(seq) ?? 0,
    erased,
    /** In order; those that hold something erased are to go. */
    loose() {
      const gone = erased();
      const holdsErased = (one: Opened) =>
        one.holdsErased || one.events.some((event) => isErased(event, gone));
      return [...opened.values()]
        .map((one) => ({ ...one, isToGo: holdsErased(one) }))
        .filter(({ isToGo, hasAside, events }) => isToGo || (!hasAside && events.length < LOOSE))
        .sort((left, right) => left.seq - right.seq);
    },
    /** The places of loose records as runs, with no other sealed record in one. */
    runs(loose: readonly Opened[]): readonly (readonly [number, number])[] {
      const isLoose = new Set(loose.map(({ seq }) => seq));
      const runs: [number, number][] = [];
      let run: [number, number] | null = null;
      for (const seq of lanes.keys()) {
        if (!isLoose.has(seq)) run = null;
        else if (run) run[1] = seq;
        else {
          run = [seq, seq];
          runs.push(run);
        }
      }
      return runs;
    },
    async until<Value>(find: () => Value | undefined | false): Promise<Value> {
      for (;;) {
        const found = find();
        if (found) return found;
        if (ended) throw ended;
        await new Promise<void>((resolve) => waiting.add(resolve));
      }
    },
  };

  /** All that was erased, what was said of it included. */
  function erased(): ReadonlySet<string> {
    const named = shared.rights()?.erased ?? new Set<string>();
    if (named.size === 0) return named;
    return erasedWith(
      [...opened.values()].flatMap(({ events }) => events),
      named,
    );
  }

  async function take(message: ServerMessage): Promise<void> {
    if ('k' in message) answers.set(message.k, message);
    if (message.t === 'following' && message.c === classId) ({ head } = message);
    if (message.t === 'closed') throw new Error(`Closed: ${message.why}`);
    if (message.t !== 'records') return;
    const batch = takeBatch(followed, message);
    if (batch === null) throw new Error('Something is missing.');
    let { trace } = followed;
    for (const one of message.records) {
      const seq = 'id' in one ? one.seq : one.to;
      if (seq <= followed.cursor) continue;
      trace = 'id' in one ? traceAfter(trace, one.id) : one.trace;
      traces.set(seq, trace);
    }
    ({ followed } = batch);
    for (const record of batch.fresh) await open(record);
  }

  async function open(record: KeptRecord): Promise<void> {
    if (record.lane !== 'rights') lanes.set(record.seq, record.lane);
    for (const one of await shared.take(record, (event) => writers.get(event))) {
      const lane = lanes.get(one.seq);
      if (one.kind !== 'events' || !lane) continue;
      const { events, aside } = one.admitted;
      for (const { id, by } of events) writers.set(id, by);
      const [hasAside, { holdsErased, seq }] = [aside.length > 0, one];
      opened.set(seq, { seq, lane, events, hasAside, holdsErased });
    }
  }
}

let lastK = 0;

/** Has a record kept and gives its place; rejects when it is refused. */
async function keep(
  line: FarLine,
  reading: ReturnType<typeof readServer>,
  { classId, wait }: PackSpec,
  record: ClassRecord,
): Promise<readonly number[]> {
  for (;;) {
    const k = ++lastK;
    const message: DeviceMessage = { t: 'append', k, c: classId, records: [record] };
    line.send(message);
    const answer = await reading.until(() => reading.answer(k));
    if (answer.t === 'kept') return answer.seqs;
    if (answer.t !== 'later') throw new Error('What was packed was not taken.');
    await wait(answer.ms);
  }
}
