import { array, custom, object, string } from 'valibot';
import { isSequence } from '../../core/log/is-group-place.ts';
import type { Sequence } from '../../core/sequence/sequence.ts';
import { remembered } from '../device/remembered.ts';

/** The most orders kept; the oldest go first. */
const mostKept = 12;

/** Her earlier orders: whenever one is replaced as a whole, it is kept here, the newest first. */
export const earlierOrders = remembered(
  'earlier-orders',
  array(object({ kept: string(), sequence: custom<Sequence>(isSequence) })),
  [],
);

/** Keeps an order that is about to be replaced; `kept` says when, in words. */
export function keepOrder(sequence: Sequence, kept: string): void {
  const text = JSON.stringify(sequence.steps);
  const others = earlierOrders
    .peek()
    .filter((earlier) => JSON.stringify(earlier.sequence.steps) !== text);
  earlierOrders.value = [{ kept, sequence }, ...others].slice(0, mostKept);
}
