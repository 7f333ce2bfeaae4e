import type { CameThrough } from '../../../core/warm-up/came-through.ts';
import { cardShort } from '../../wording/card-short.ts';
import { listed } from '../../wording/listed.ts';
import { say } from './wording.ts';

/** What broke at one place of the plan: a cross, and the letters where it was said which. */
export function Missed({ here }: { readonly here: CameThrough | undefined }) {
  if (!here?.isMarked) return null;
  return (
    <span class="missed">
      <span aria-hidden="true">×</span> {here.broke.map(cardShort).join(' ') || say.missed.broke}
    </span>
  );
}

/** The same in words, to stand behind a name; empty where nothing came up. */
export function hereSaid(here: CameThrough | undefined): string {
  if (!here) return '';
  const broke =
    here.broke.length > 0
      ? say.missed.cardsBroke(listed(here.broke.map(cardShort)))
      : say.missed.somethingBroke;
  return `${here.state === 'up' ? say.missed.whereYouStopped : say.missed.read}${here.isMarked ? broke : ''}`;
}
