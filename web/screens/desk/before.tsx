import { stepsOf } from '../../../core/warm-up/moments.ts';
import { momentOf } from '../../warm-up/marking.ts';
import { MarkRow } from './mark-row.tsx';
import { say } from './wording.ts';

/** The card, sound or word before, smaller: it can still be marked. */
export function Before() {
  const before = momentOf('before');
  if (!before) return null;
  return (
    <div class="desk-before">
      <p class="quiet small">{say.before.before(<kbd class="key">{say.before.shift}</kbd>)}</p>
      <MarkRow which="before" moment={before} open={stepsOf(before)} lit={null} />
    </div>
  );
}
