import { isBuiltIn } from '../../../core/sequence/order-here.ts';
import type { Progress } from '../../../core/sequence/progress.ts';
import { progress, setProgress } from '../../state/progress.ts';

/** Takes an order whose steps were moved: from then on it is her own. Can be undone. */
export function rearrange(next: Progress, said: string): void {
  const { sequence } = progress.peek();
  const name = isBuiltIn(sequence) ? 'Our own order' : sequence.name;
  setProgress({ ...next, sequence: { ...next.sequence, name } }, said);
}
