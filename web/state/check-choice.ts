import { computed } from '@preact/signals';
import { boolean, custom, nullable, object, picklist } from 'valibot';
import { CHECK_KINDS, type CheckKind } from '../../core/checks/check-form.ts';
import { type CheckId, type ChildId, childId, isCheckId, isChildId } from '../../core/ids.ts';
import type { CheckRecord, Child } from '../../core/log/class-state.ts';
import { remembered } from '../device/remembered.ts';
import { everyone } from './everyone.ts';
import { classState } from './open-class.ts';

const choice = remembered(
  'check',
  object({
    child: custom<ChildId>(isChildId),
    kind: picklist(CHECK_KINDS),
    timed: boolean(),
    /** The check that is on the screen; null while one is being chosen. */
    open: nullable(custom<CheckId>(isCheckId)),
  }),
  { child: childId(''), kind: 'letter-sounds', timed: true, open: null },
);

/** What she has chosen to check. */
export const chosen = computed(() => choice.value);

/** The child she has chosen; the first one until then, null when there is none. */
export const chosenChild = computed<Child | null>(
  () => everyone.value.find(({ id }) => id === choice.value.child) ?? everyone.value[0] ?? null,
);

/** The check that is on the screen; null while one is being chosen. */
export const openRecord = computed<CheckRecord | null>(() => {
  const { open } = choice.value;
  return (open && classState.value.checks.get(open)) ?? null;
});

/** Changes what she wants to check. */
export function choose(some: {
  readonly child?: ChildId;
  readonly kind?: CheckKind;
  readonly timed?: boolean;
}): void {
  choice.value = { ...choice.peek(), ...some };
}

/** Puts a check on the screen, or none. */
export function openCheck(id: CheckId | null): void {
  choice.value = { ...choice.peek(), open: id };
}

/** The minute, in seconds. */
export const MINUTE = 60;

/** How many items a form has: more than are read in a minute, and when untimed what a child has patience for (common practice, no source). */
const COUNTS: Readonly<Record<CheckKind, { readonly timed: number; readonly untimed: number }>> = {
  'letter-sounds': { timed: 80, untimed: 40 },
  'nonsense-words': { timed: 40, untimed: 20 },
  'sight-words': { timed: 60, untimed: 20 },
};

/** How many items the form has that she has chosen. */
export function countWanted(kind: CheckKind, timed: boolean): number {
  return COUNTS[kind][timed ? 'timed' : 'untimed'];
}
