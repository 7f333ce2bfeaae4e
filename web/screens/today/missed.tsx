import type { CameThrough } from '../../../core/warm-up/came-through.ts';
import { cardShort } from '../../wording/card-short.ts';
import { listed } from '../../wording/listed.ts';

/** What broke at one place of the plan: a cross, and the letters where it was said which. */
export function Missed({ here }: { readonly here: CameThrough | undefined }) {
  if (!here?.isMarked) return null;
  return (
    <span class="missed">
      <span aria-hidden="true">×</span> {here.broke.map(cardShort).join(' ') || 'broke'}
    </span>
  );
}

/** The same in words, to stand behind a name; empty where nothing came up. */
export function hereSaid(here: CameThrough | undefined): string {
  if (!here) return '';
  const broke = here.broke.length > 0 ? `, ${listed(here.broke.map(cardShort))} broke` : ', broke';
  return `${here.state === 'up' ? ', where you stopped' : ', read'}${here.isMarked ? broke : ''}`;
}
