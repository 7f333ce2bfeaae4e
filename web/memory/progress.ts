import { computed } from '@preact/signals';
import { array, boolean, integer, minValue, nullable, number, object, pipe } from 'valibot';
import { type Progress, SEQUENCE, taughtOf } from '../engine.ts';
import { remembered } from './remembered.ts';
import { itemSchema, sequenceSchema } from './sequence-schema.ts';
import { change } from './undo.ts';

const schema = object({
  /** Her own order, or null for the built-in one. */
  own: nullable(sequenceSchema),
  upTo: pipe(number(), integer(), minValue(0)),
  added: array(itemSchema),
  dropped: array(itemSchema),
  /** Whether she has said anything yet; the first screen depends on it. */
  told: boolean(),
});

const standing = remembered('standing', schema, {
  own: null,
  upTo: 0,
  added: [],
  dropped: [],
  told: false,
});

/** Where the class stands. */
export const progress = computed<Progress>(() => {
  const { own, upTo, added, dropped } = standing.value;
  return { sequence: own ?? SEQUENCE, upTo, added, dropped };
});

/** What the class has been taught. */
export const taught = computed(() => taughtOf(progress.value));

/** Whether she has told us anything yet. */
export const told = computed(() => standing.value.told);

/** Whether the order is her own. */
export const hasOwnOrder = computed(() => standing.value.own !== null);

/** Changes where the class stands; can be undone. */
export function setProgress(next: Progress, said: string): void {
  const own = next.sequence === SEQUENCE ? null : mutable(next.sequence);
  const { upTo, added, dropped } = next;
  change(standing, { own, upTo, added: [...added], dropped: [...dropped], told: true }, said);
}

/** The same order as the schema's own type, whose lists are not readonly. */
function mutable(sequence: Progress['sequence']) {
  const steps = sequence.steps.map((step) => ({ ...step, items: [...step.items] }));
  return { name: sequence.name, steps };
}
