import { computed } from '@preact/signals';
import { array, object, string } from 'valibot';
import { remembered } from '../device/remembered.ts';
import { today } from './day.ts';
import { classState } from './open-class.ts';
import { change } from './undo.ts';

const kept = remembered('groups-out', object({ day: string(), groups: array(string()) }), {
  day: '',
  groups: [],
});

/** The groups that have no warm-up today, by class and id; forgotten tomorrow. */
const out = computed(() => new Set(kept.value.day === today() ? kept.value.groups : []));

/** Whether a group has no warm-up today. */
export function isOutToday(group: string): boolean {
  return out.value.has(`${classState.value.id} ${group}`);
}

/** Takes a group out of today, or back in; can be undone. */
export function setOutToday(group: string, isOut: boolean, name: string): void {
  const key = `${classState.peek().id} ${group}`;
  const others = [...out.peek()].filter((other) => other !== key);
  const groups = isOut ? [...others, key] : others;
  change(kept, { day: today(), groups }, isOut ? `Not today: ${name}.` : `Today again: ${name}.`);
}
