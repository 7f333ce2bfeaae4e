import { computed } from '@preact/signals';
import { array, object, string } from 'valibot';
import { remembered } from '../device/remembered.ts';
import { today } from './day.ts';
import { children } from './open-class.ts';

const kept = remembered('absent', object({ day: string(), children: array(string()) }), {
  day: '',
  children: [],
});

/** Who is away today, by id; forgotten tomorrow. */
export const absent = computed<ReadonlySet<string>>(
  () => new Set(kept.value.day === today() ? kept.value.children : []),
);

/** The children of the group at work who are there today, by id. */
export const present = computed<readonly string[]>(() =>
  children.value.map(({ id }) => id).filter((id) => !absent.value.has(id)),
);

/** Says that a child is away today, or that it has come. */
export function setAbsent(child: string, away: boolean): void {
  const others = [...absent.peek()].filter((other) => other !== child);
  kept.value = { day: today(), children: away ? [...others, child] : others };
}
