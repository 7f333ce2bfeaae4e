import type { ClassState } from './class-state.ts';
import type { LogEvent } from './event.ts';
import { compareEvents } from './event-order.ts';
import { eventsOf } from './facts.ts';

/**
 * Every event that has made a class, those of another version included, in
 * their order: `replay` of them gives the class again. What a copy holds even
 * when the store is out of reach.
 */
export function eventsIn({ facts }: Pick<ClassState, 'facts'>): readonly LogEvent[] {
  return [...eventsOf(facts)].sort(compareEvents);
}
