import type { Tally } from '../../core/boards/judge/card-gain.ts';
import { hiddenCount } from '../../core/boards/judge/hidden-count.ts';

/** What stays hidden of a board, and why, in one sentence that every screen says: `12 stay hidden: 3 to regret, 9 would mislead.` */
export function hiddenInWords(tally: Tally): string {
  const { all, toRegret } = hiddenCount(tally);
  if (all === 0) return 'Nothing stays hidden.';
  const { rule, unfit, untaught } = tally;
  const parts = [toRegret === 0 ? 'none to regret' : `${toRegret} to regret`];
  if (rule > 0)
    parts.push(rule === 1 ? '1 breaks a spelling rule' : `${rule} break a spelling rule`);
  if (unfit > 0) parts.push(`${unfit} would mislead`);
  if (untaught > 0) parts.push(`${untaught} not taught yet`);
  return `${all} ${all === 1 ? 'stays' : 'stay'} hidden: ${parts.join(', ')}.`;
}
