import type { Progress } from '../../core/sequence/progress.ts';
import type { WordWish } from '../state/wish.ts';
import { SHAPE_NAMES } from './word-shapes.ts';

/** What stands above a printed list of words. */
export function listTitle(
  { onlyTaught, shape }: WordWish,
  { upTo }: Pick<Progress, 'upTo'>,
): string {
  const name = SHAPE_NAMES.find((each) => each.shape === shape)?.name;
  return [name ?? 'Words', ...(onlyTaught ? [`taught up to step ${upTo}`] : [])].join(' · ');
}
