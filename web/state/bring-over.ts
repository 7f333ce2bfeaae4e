import { array, boolean, custom, nullable, number, object, optional, safeParse } from 'valibot';
import { WHOLE_CLASS } from '../../core/log/class-state.ts';
import type { EventSpec } from '../../core/log/event.ts';
import { makeGroupPlace, progressOf } from '../../core/log/group-place.ts';
import { isItem, isSequence } from '../../core/log/is-group-place.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import type { Item, Sequence } from '../../core/sequence/sequence.ts';
import { shelf } from '../device/shelf.ts';
import { recordForGood, store } from './open-class.ts';

/** How the place in the order was kept before there was a log of the class; with no edition named, it is the first. */
const standingSchema = object({
  own: nullable(custom<Sequence>(isSequence)),
  edition: optional(number()),
  upTo: number(),
  added: array(custom<Item>(isItem)),
  dropped: array(custom<Item>(isItem)),
  told: boolean(),
});

/**
 * The place in the order that an earlier version kept on its own shelf goes into the log of the class
 * that is open, and leaves the shelf only once the log has it for good.
 */
export async function bringOver(): Promise<void> {
  const text = shelf.read('standing');
  if (text === null || store.inMemory.peek()) return;
  const events = eventsFrom(text);
  if (events.length === 0 || (await recordForGood(...events))) shelf.remove('standing');
}

function eventsFrom(text: string): readonly EventSpec[] {
  const parsed = safeParse(standingSchema, parseJson(text));
  if (!parsed.success) {
    shelf.setAside('standing', text);
    return [];
  }
  const { told, ...standing } = parsed.output;
  if (!told) return [];
  const value = makeGroupPlace(progressOf({ ...standing, at: [] }, SEQUENCE), SEQUENCE);
  return [{ kind: 'set', body: { of: 'group', id: WHOLE_CLASS, field: 'standing', value } }];
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
