import { type ClassId, eventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { AS_IT_IS, type As, type EventPage, type PageShape } from './page-format.ts';

/**
 * The events of a page.
 *
 * Problem: half of what an opening costs is to make the objects of 60,000 events. Method: one walk over the
 * list, by place; the shapes that come by the ten thousand are made as literals, which a browser makes in one
 * stroke, and all others field by field. Throws where the list does not fit its shapes.
 */
export function eventsOfPage(classId: ClassId, page: EventPage): LogEvent[] {
  const { texts, list } = page;
  const reading = new Reading(page);
  const events: LogEvent[] = [];
  let at = 0;
  while (reading.next < list.length) {
    const id = eventId(list[reading.next] as string);
    at += list[reading.next + 1] as number;
    const by = texts[list[reading.next + 2] as number] as string;
    const kind = texts[list[reading.next + 3] as number] as string;
    reading.next += 4;
    events.push({ id, classId, at, by, kind, body: reading.body() });
  }
  return events;
}

type Often = 'moment' | 'counted' | 'flip' | null;

/** The shapes that come by the ten thousand: a moment of a warm-up, one with its count, a flip of a run. */
const OFTEN: ReadonlyMap<string, Often> = new Map<string, Often>([
  ['[["drillId","text"],["part","text"],["place","value"]]', 'moment'],
  ['[["drillId","text"],["part","text"],["place","value"],["count","value"]]', 'counted'],
  ['[["cards","texts"],["word","text"],["sounds","texts"],["kind","text"]]', 'flip'],
]);

/** A page while it is read. */
class Reading {
  next = 0;
  readonly #texts: readonly string[];
  readonly #shapes: readonly PageShape[];
  readonly #often: readonly Often[];
  readonly #list: readonly unknown[];

  constructor({ texts, shapes, list }: EventPage) {
    this.#texts = texts;
    this.#shapes = shapes;
    this.#list = list;
    this.#often = shapes.map((shape) => OFTEN.get(JSON.stringify(shape)) ?? null);
  }

  body(): unknown {
    const place = this.#number();
    return place === AS_IT_IS ? this.#value() : this.#object(place);
  }

  #object(place: number): unknown {
    const often = this.#often[place];
    if (often === 'moment' || often === 'counted') {
      const drillId = this.#text();
      const part = this.#text();
      const at = this.#value();
      return often === 'moment'
        ? { drillId, part, place: at }
        : { drillId, part, place: at, count: this.#value() };
    }
    if (often === 'flip') {
      const cards = this.#textsHere();
      const word = this.#text();
      const sounds = this.#textsHere();
      return { cards, word, sounds, kind: this.#text() };
    }
    const shape = this.#shapes[place] as PageShape;
    const object: Record<string, unknown> = {};
    for (let field = 0; field < shape.length; field++) {
      const [name, as] = shape[field] as PageShape[number];
      object[name] = this.#as(as);
    }
    return object;
  }

  #as(as: As): unknown {
    if (as === 'text') return this.#text();
    if (as === 'value') return this.#value();
    if (as === 'texts') return this.#textsHere();
    if (as === 'object') return this.#object(this.#number());
    const count = this.#count();
    const several = new Array<unknown>(count);
    for (let place = 0; place < count; place++) several[place] = this.#object(this.#number());
    return several;
  }

  #textsHere(): string[] {
    const count = this.#count();
    const several = new Array<string>(count);
    for (let place = 0; place < count; place++) several[place] = this.#text();
    return several;
  }

  #count(): number {
    const count = this.#number();
    if (count > this.#list.length) throw new Error('The page was damaged.');
    return count;
  }

  #value(): unknown {
    return this.#list[this.next++];
  }

  #number(): number {
    return this.#list[this.next++] as number;
  }

  #text(): string {
    return this.#texts[this.#list[this.next++] as number] as string;
  }
}
