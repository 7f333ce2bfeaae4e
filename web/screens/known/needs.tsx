import { type GroupNeed, needSaid } from '../../../core/groups/needs.ts';
import { SoundedCard } from '../../controls/sounded-card.tsx';
import { nameOf } from '../../state/class-now.ts';
import { namesSaid } from '../../wording/said.ts';
import { say } from './wording.ts';

/** What a group needs next, each with what was seen of it and who missed it. */
export function Needs({ needs }: { readonly needs: readonly GroupNeed[] }) {
  if (needs.length === 0) {
    return <p class="quiet">{say.needs.nothingStandsOutNothing}</p>;
  }
  return (
    <ul class="needs">
      {needs.map((need) => (
        <li key={need.card}>
          <SoundedCard id={need.card} />
          <span>
            {capital(needSaid(need))}
            {need.size > 1 && need.missedBy.length > 0 && (
              <span class="quiet small need-of">
                {namesSaid(
                  need.missedBy.map((id) => nameOf({ of: 'child', id })),
                  6,
                )}
              </span>
            )}
          </span>
        </li>
      ))}
    </ul>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
