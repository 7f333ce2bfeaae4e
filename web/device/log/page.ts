import { type ClassId, eventId } from '../../../core/ids.ts';
import { crc32 } from '../../../core/log/crc32.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { isEvent } from '../../../core/log/parse-event.ts';
import { AS_IT_IS, type As, type EventPage, type PageShape } from './page-format.ts';
import { eventsOfPage } from './page-reading.ts';

/**
 * Events of one class as one text, which a browser reads back far faster than as many records.
 *
 * Problem: a class of 60,000 events should open within 300 ms, and most of that is reading: how much
 * text the browser hands over, and how much of it is parsed. Method: events say the same few things
 * over and over, so a page says once what bodies look like (a shape: their fields, and what stands in
 * each) and which texts come up (drills, cards, children), and an event is only a few numbers in one
 * long list. Time O(n) both ways. Alternatives: plain JSON, which is three to four times as long
 * and as slow; compressing it, which cannot be waited for inside a transaction; the numbers as bytes
 * beside the text, which is no faster to decode.
 */
export function encodePage(events: readonly LogEvent[]): string {
  const page = new Writing();
  let before = 0;
  for (const { id, at, by, kind, body } of events) {
    page.list.push(id, at - before);
    before = at;
    page.text(by);
    page.text(kind);
    page.body(body);
  }
  return page.end();
}

/**
 * The events of a page, as they were put in. Throws on a text that `encodePage` did not write, or whose
 * check number shows that it was damaged since; the pages of the first version have none.
 */
export function decodePage(classId: ClassId, text: string): LogEvent[] {
  if (!isAsWritten(text)) throw new Error('The page was damaged.');
  const page: EventPage | readonly EventCells[] = JSON.parse(text);
  return isRows(page) ? page.map((row) => fromRow(classId, row)) : eventsOfPage(classId, page);
}

/**
 * The events of a page that may be damaged, checked like those of a file, and how many records are bad: one
 * for a page that cannot be read at all.
 */
export function readPage(
  classId: ClassId,
  text: unknown,
): { readonly events: readonly LogEvent[]; readonly damaged: number } {
  try {
    const all = decodePage(classId, text as string);
    const events = all.every((event) => isEvent(event)) ? all : all.filter(isEvent);
    return { events, damaged: all.length - events.length };
  } catch {
    return { events: [], damaged: 1 };
  }
}

const SUM = ',"sum":';

/** The JSON of a page with its check number as a further field, which older versions overlook. */
function withSum(json: string): string {
  const open = json.slice(0, -1);
  return `${open}${SUM}${crc32(open)}}`;
}

function isAsWritten(text: string): boolean {
  const end = text.slice(-MOST_OF_SUM);
  const at = end.lastIndexOf(SUM);
  if (at < 0) return true;
  const open = text.length - end.length + at;
  return end.slice(at + SUM.length, -1) === String(crc32(text.slice(0, open)));
}

/** Signs that a check number takes at most, its name and the last brace included. */
const MOST_OF_SUM = SUM.length + 11;

/** A page while it is written. */
class Writing {
  readonly list: unknown[] = [];
  readonly #texts = new Map<string, number>();
  readonly #shapes = new Map<string, number>();

  text(text: string): void {
    this.list.push(placeIn(this.#texts, text));
  }

  body(body: unknown): void {
    if (isPlain(body)) this.#object(body);
    else this.list.push(AS_IT_IS, body);
  }

  end(): string {
    const shapes = [...this.#shapes.keys()].map((shape) => JSON.parse(shape));
    const page = { texts: [...this.#texts.keys()], shapes, list: this.list };
    return withSum(inAscii(JSON.stringify(page)));
  }

  #object(value: Plain): void {
    const fields = Object.entries(value).filter(([, held]) => held !== undefined);
    const shape: PageShape = fields.map(([field, held]) => [field, standsAs(held)]);
    this.list.push(placeIn(this.#shapes, JSON.stringify(shape)));
    for (const [place, [, held]] of fields.entries()) this.#put(held, shape[place]?.[1] as As);
  }

  #put(value: unknown, as: As): void {
    if (as === 'text') this.text(value as string);
    else if (as === 'object') this.#object(value as Plain);
    else if (as === 'value') this.list.push(value);
    else {
      const several = value as readonly unknown[];
      this.list.push(several.length);
      for (const one of several) this.#put(one, as === 'texts' ? 'text' : 'object');
    }
  }
}

/**
 * The same JSON in ASCII: one sign beyond Latin-1 makes a browser keep and hand over every sign of a
 * text as two bytes. What was made from such a text stays so, whatever it holds; read again from bytes
 * it takes one a sign.
 */
function inAscii(json: string): string {
  const ascii = json.replace(
    /[^\0-\x7f]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return new TextDecoder().decode(new TextEncoder().encode(ascii));
}

function placeIn(places: Map<string, number>, name: string): number {
  const known = places.get(name) ?? places.size;
  places.set(name, known);
  return known;
}

function standsAs(value: unknown): As {
  if (typeof value === 'string') return 'text';
  if (isPlain(value)) return 'object';
  if (!Array.isArray(value)) return 'value';
  if (value.every((one) => typeof one === 'string')) return 'texts';
  return value.every(isPlain) ? 'objects' : 'value';
}

type Plain = Readonly<Record<string, unknown>>;

/** Whether a value can be taken apart: an object that JSON would give back with the same fields. */
function isPlain(value: unknown): value is Plain {
  return (
    typeof value === 'object' &&
    value !== null &&
    !Array.isArray(value) &&
    !Object.hasOwn(value, '__proto__') &&
    !('toJSON' in value)
  );
}

/** An event as the first pages had it. */
type EventCells = readonly [id: string, at: number, by: string, kind: string, body: unknown];

function isRows(page: EventPage | readonly EventCells[]): page is readonly EventCells[] {
  return Array.isArray(page);
}

function fromRow(classId: ClassId, [id, at, by, kind, body]: EventCells): LogEvent {
  return { id: eventId(id), classId, at, by, kind, body };
}
