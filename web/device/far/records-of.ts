import type { ClassId, EventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { ClassRecord } from '../../../core/sharing/record.ts';
import { LANES, laneOf } from '../../../core/sharing/role.ts';
import { datingsOf, type Stamping } from '../log/stamping.ts';
import { toText, utf8 } from './bytes.ts';
import type { SharedClass } from './shared-class.ts';

/** So far clocks may differ before times are set right, in milliseconds. */
const LENIENCE = 2 * 60 * 1000;

/** Events on their way: as records, each with the ids of its events. */
export interface Sealed {
  readonly records: readonly { readonly record: ClassRecord; readonly ids: readonly EventId[] }[];
  /** What was said of times that lay ahead; to be kept here as well. */
  readonly datings: readonly LogEvent[];
  /** How many records this device has made of the class by now. */
  readonly count: number;
}

/**
 * Events sealed as records, one for each lane; an event on a lane on which this device may not write is in
 * none. What this device's clock stamped ahead of the server's, which is `ahead` of it by so many
 * milliseconds, is said to have been now.
 */
export async function recordsOf(
  events: readonly LogEvent[],
  {
    classId,
    shared,
    stamping,
    ahead,
    count,
  }: {
    readonly classId: ClassId;
    readonly shared: Pick<SharedClass, 'sealed'>;
    readonly stamping: Stamping;
    readonly ahead: number;
    readonly count: number;
  },
): Promise<Sealed> {
  const there = Math.floor(stamping.now() + ahead);
  const records: { record: ClassRecord; ids: readonly EventId[] }[] = [];
  const datings: LogEvent[] = [];
  let made = count;
  for (const lane of LANES) {
    const ofLane = events.filter(({ kind }) => laneOf(kind) === lane);
    if (ofLane.length === 0) continue;
    const early = ofLane.filter(({ at }) => at > there + LENIENCE);
    const right = early.map(({ id }) => ({ event: id, at: there }));
    const said = datingsOf(right, classId, { ...stamping, now: () => there });
    const ids = ofLane.map(({ id }) => id);
    const record = await shared.sealed(lane, await recordIdOf(ids), made + 1, [...ofLane, ...said]);
    if (record === null) continue;
    made += 1;
    records.push({ record, ids });
    datings.push(...said);
  }
  return { records, datings, count: made };
}

/** The same for the same events, so that what is sent twice is known again. */
async function recordIdOf(ids: readonly EventId[]): Promise<string> {
  const text = utf8(ids.join('\n'));
  return toText(new Uint8Array(await crypto.subtle.digest('SHA-256', text)).subarray(0, 16));
}
