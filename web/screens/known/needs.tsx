import type { GroupNeed } from '../../../core/learners/suggest-groups.ts';
import { SoundedCard } from '../../controls/sounded-card.tsx';
import { nameOf } from '../../state/class-now.ts';
import { namesSaid } from '../../wording/said.ts';

/** What a group needs next, each with how often it would go wrong and for whom. */
export function Needs({
  needs,
  size,
}: {
  readonly needs: readonly GroupNeed[];
  readonly size: number;
}) {
  if (needs.length === 0) {
    return <p class="quiet">Nothing stands out: all that was read alone goes well.</p>;
  }
  return (
    <ul class="needs">
      {needs.map(({ card, children, gap }) => (
        <li key={card}>
          <SoundedCard id={card} />
          <span>
            {forWhom(children, size)}
            <span class="quiet small">{wrongSaid(gap)}</span>
          </span>
        </li>
      ))}
    </ul>
  );
}

/** More than so many children are counted, not named. */
const MOST_NAMES = 3;

function forWhom(children: readonly string[], size: number): string {
  if (size === 1) return '';
  if (children.length === size) return 'for all of them';
  if (children.length > MOST_NAMES) return `for ${children.length} of ${size}`;
  return `for ${namesSaid(children.map((id) => nameOf({ of: 'child', id })))}`;
}

/** How often a group would go wrong: `about 3 of 10 wrong`. */
function wrongSaid(gap: number): string {
  return `about ${Math.max(1, Math.round(gap * 10))} of 10 wrong`;
}
