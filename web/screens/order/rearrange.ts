import { isBuiltIn } from '../../../core/sequence/order-here.ts';
import type { Progress } from '../../../core/sequence/progress.ts';
import { progress, setProgress } from '../../state/progress.ts';
import { say } from './wording.ts';

/** Takes an order whose steps were moved: from then on it is her own. Can be undone. */
export function rearrange(next: Progress, said: string): void {
  const { sequence } = progress.peek();
  const name = isBuiltIn(sequence) ? say.rearrange.ourOwnOrder : sequence.name;
  setProgress({ ...next, sequence: { ...next.sequence, name } }, said);
}
