import { deflateSync, inflateSync } from 'fflate';
import type { ClassId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { parseEvent } from '../../../core/log/parse-event.ts';
import { type ClassRecord, headerOf } from '../../../core/sharing/record.ts';
import { decodePage, encodePage } from '../log/page.ts';
import { joined, utf8 } from './bytes.ts';
import { seal, unseal } from './cipher.ts';

/** Sizes are rounded up to so many bytes, so that they tell little of what is inside. */
const STEP = 64;

/** Before the packed text stands how long it is, packed and unpacked. */
const LENGTHS = 8;

/** The most that a record's body may unfold to: what a thousand events take, several times over. */
const MOST_BYTES = 8 * 1024 * 1024;

type Header = Omit<ClassRecord, 'body' | 'signature'>;

/** Events of one class as the body of a record: packed, rounded up in size, sealed. */
export function sealEvents(
  key: CryptoKey,
  classId: ClassId,
  header: Header,
  events: readonly LogEvent[],
): Promise<string> {
  const plain = utf8(encodePage(events));
  const packed = deflateSync(plain);
  const lengths = new Uint8Array(LENGTHS);
  const view = new DataView(lengths.buffer);
  view.setUint32(0, packed.length);
  view.setUint32(4, plain.length);
  const rest = new Uint8Array((STEP - ((packed.length + LENGTHS) % STEP)) % STEP);
  return seal(key, headerOf(classId, header), joined(lengths, packed, rest));
}

/** The events in a record's body; null when it was not sealed so, or holds anything else. */
export async function unsealEvents(
  key: CryptoKey,
  classId: ClassId,
  record: ClassRecord,
): Promise<readonly LogEvent[] | null> {
  const bytes = await unseal(key, headerOf(classId, record), record.body);
  if (bytes === null || bytes.length < LENGTHS) return null;
  try {
    const view = new DataView(bytes.buffer, bytes.byteOffset);
    const [packed, plain] = [view.getUint32(0), view.getUint32(4)];
    if (plain > MOST_BYTES) return null;
    const out = new Uint8Array(plain);
    const text = inflateSync(bytes.subarray(LENGTHS, LENGTHS + packed), { out });
    const events: LogEvent[] = [];
    for (const value of decodePage(classId, new TextDecoder().decode(text))) {
      const read = parseEvent(value);
      if ('error' in read) return null;
      events.push(read.event);
    }
    return events;
  } catch {
    return null;
  }
}
