import { splitItems } from './item.ts';
import { itemNamed } from './item-named.ts';
import type { Sequence } from './sequence.ts';
import { STEP_ROWS } from './steps.ts';

/**
 * Our own order of teaching, kindergarten to grade 3. How it was found, and
 * why each step stands where it does: docs/sequence.md and each step's `why`.
 */
export const SEQUENCE: Sequence = {
  name: 'Sweepline order',
  steps: STEP_ROWS.map(([stage, grade, title, items, why], place) => ({
    number: place + 1,
    stage,
    grade,
    title,
    items: splitItems(items).map(itemNamed),
    why,
  })),
};
