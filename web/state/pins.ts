/** What she wants in the warm-up of a group every day, until she takes it off. */
import { computed } from '@preact/signals';
import { array, custom, type InferOutput, object, record, string } from 'valibot';
import type { CardId } from '../../core/language/card-id.ts';
import { isCard } from '../../core/log/is-card.ts';
import { remembered } from '../device/remembered.ts';
import { groupKey } from './open-class.ts';
import { change } from './undo.ts';

const cards = array(custom<CardId>(isCard));

const pinsSchema = object({
  /** Cards and words known by sight to show. */
  visual: cards,
  /** Sounds to say, each by its first spelling, and words known by sight to spell. */
  auditory: cards,
  /** Words of the run, as they are spelled. */
  words: array(string()),
});
export type Pins = InferOutput<typeof pinsSchema>;

const NONE: Pins = { visual: [], auditory: [], words: [] };

const kept = remembered('pins', object({ of: record(string(), pinsSchema) }), { of: {} });

/** What is pinned for the group at work. */
export const pins = computed<Pins>(() => kept.value.of[groupKey.value] ?? NONE);

/** Whether something is pinned. */
export function isPinned(part: keyof Pins, what: string): boolean {
  return (pins.value[part] as readonly string[]).includes(what);
}

/** Pins something, or takes its pin off; can be undone. */
export function setPinned<Part extends keyof Pins>(
  part: Part,
  what: Pins[Part][number],
  isOn: boolean,
): void {
  const now = pins.peek();
  const others = (now[part] as readonly string[]).filter((other) => other !== what);
  const next = { ...now, [part]: isOn ? [...others, what] : others };
  const of = { ...kept.peek().of, [groupKey.peek()]: next };
  change(kept, { of }, isOn ? 'It comes every day.' : 'It no longer comes every day.');
}
