import { isBuiltIn } from '../../../core/sequence/order-here.ts';
import type { Progress } from '../../../core/sequence/progress.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { keepOrder } from '../../state/orders.ts';
import { progress, setProgress } from '../../state/progress.ts';
import { carryOver } from './carry-over.ts';
import { say } from './wording.ts';

/**
 * Puts another order in the place of the present one. What was taught stays
 * taught as far as the new order can say it (see `carryOver`); her own present
 * order is kept among the earlier ones. Can be undone.
 */
export function replaceOrder(next: Sequence, said: string): void {
  const now = progress.peek();
  if (!isBuiltIn(now.sequence)) keepOrder(now.sequence, today());
  const carried = carryOver(now, next);
  setProgress(carried, `${said} ${whereItStands(carried)}`);
}

/** Where the class stands now, and what it knows beyond. */
function whereItStands({ upTo, added }: Progress): string {
  const beyond =
    added.length === 0
      ? ''
      : say.replace.itKnowsMore(
          added.length,
          added.length === 1 ? say.replace.thing : say.replace.things,
        );
  return say.replace.yourClassKnowsWhat(
    upTo === 0 ? say.replace.noStepIsWhole : say.replace.steps1To(upTo),
    beyond,
  );
}

function today(): string {
  return new Date().toLocaleDateString('en-US', { month: 'long', day: 'numeric', year: 'numeric' });
}
