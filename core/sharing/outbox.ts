import type { EventId } from '../ids.ts';
/** What a device has still to send of a class, by the ids of events. */
export interface Outbox {
  /** Oldest first. */
  readonly waiting: readonly EventId[];
  /** So many of the first flew together and are sent again as they were, so that they are known again. */
  readonly together: number;
  /** What was sent and is not answered yet; null for nothing. */
  readonly flying: { readonly k: number; readonly ids: readonly EventId[] } | null;
  /** What the server did not take, and why: shown to her, and never in the way of the rest. */
  readonly aside: ReadonlyMap<EventId, string>;
  /** Not before this time is anything sent, by this device's clock. */
  readonly notBefore: number;
}

/** Nothing to send. */
export const EMPTY: Outbox = {
  waiting: [],
  together: 0,
  flying: null,
  aside: new Map(),
  notBefore: 0,
};

/** More to send; what is there already, on its way or set aside is not sent twice. */
export function addTo(outbox: Outbox, ids: readonly EventId[]): Outbox {
  const known = new Set([...outbox.waiting, ...(outbox.flying?.ids ?? []), ...outbox.aside.keys()]);
  const fresh = [...new Set(ids)].filter((id) => !known.has(id));
  return fresh.length === 0 ? outbox : { ...outbox, waiting: [...outbox.waiting, ...fresh] };
}

/** What goes next, at most so many, under the number `k`; null while something flies or has to wait. */
export function sendNext(outbox: Outbox, most: number, k: number, now: number): Outbox | null {
  if (outbox.flying !== null || outbox.waiting.length === 0 || now < outbox.notBefore) return null;
  const count = outbox.together || most;
  return {
    ...outbox,
    waiting: outbox.waiting.slice(count),
    together: 0,
    flying: { k, ids: outbox.waiting.slice(0, count) },
  };
}

/** What flew under this number is kept. */
export function whenKept(outbox: Outbox, k: number): Outbox {
  return outbox.flying?.k === k ? { ...outbox, flying: null } : outbox;
}

/**
 * What flew was not taken. What is wrong with it is set aside and the rest goes again; where nothing is
 * wrong with it but its epoch is past, all of it is sealed again and goes again.
 */
export function whenRefused(
  outbox: Outbox,
  k: number,
  wrong: readonly EventId[],
  why: string,
): Outbox {
  if (outbox.flying?.k !== k) return outbox;
  const { ids } = outbox.flying;
  const aside = why === 'old-epoch' ? [] : ids.filter((id) => wrong.includes(id));
  const left = ids.filter((id) => !aside.includes(id));
  return {
    ...outbox,
    waiting: [...left, ...outbox.waiting],
    flying: null,
    aside: new Map([...outbox.aside, ...aside.map((id) => [id, why] as const)]),
  };
}

/** The server asks to wait. */
export function whenLater(outbox: Outbox, k: number, until: number): Outbox {
  return outbox.flying?.k === k ? { ...whenLost(outbox), notBefore: until } : outbox;
}

/** The connection is gone: what flew may or may not be kept, and goes again. */
export function whenLost(outbox: Outbox): Outbox {
  if (outbox.flying === null) return outbox;
  const { ids } = outbox.flying;
  return { ...outbox, waiting: [...ids, ...outbox.waiting], together: ids.length, flying: null };
}

/** They came back from the server, so that they need not be sent. */
export function whenSeen(outbox: Outbox, ids: readonly EventId[]): Outbox {
  const seen = new Set(ids);
  const waiting = outbox.waiting.filter((id) => !seen.has(id));
  return waiting.length === outbox.waiting.length ? outbox : { ...outbox, waiting, together: 0 };
}
