import { soundStyle } from '../state/accent.ts';
import './figures.css';
import { heardSaid } from '../../core/facts/heard-said.ts';
import type { ChildId } from '../../core/ids.ts';
import type { CardId } from '../../core/language/card-id.ts';
import type { Confusion } from '../../core/learners/confusions.ts';
import { nameOf } from '../state/class-now.ts';
import { namesSaid } from '../wording/said.ts';
import { SoundedCard } from './sounded-card.tsx';
import { say } from './wording.ts';

/** So many rows stand open; the others are seldom more than a slip. */
const MOST_OPEN = 10;

/** What was heard for which card, how often, and with `named` whose it was; the commonest open. */
export function ConfusionTable({
  confusions,
  named = false,
}: {
  readonly confusions: readonly Confusion[];
  readonly named?: boolean;
}) {
  const all = gathered(confusions);
  const rest = all.slice(MOST_OPEN);
  return (
    <>
      <Rows rows={all.slice(0, MOST_OPEN)} named={named} />
      {rest.length > 0 && (
        <details>
          <summary>{say.confusionTable.more(rest.length)}</summary>
          <Rows rows={rest} named={named} />
        </details>
      )}
    </>
  );
}

function Rows({ rows, named }: { readonly rows: readonly Gathered[]; readonly named: boolean }) {
  const notation = soundStyle.value;
  return (
    <table class="figures">
      <thead>
        <tr>
          <th scope="col">{say.confusionTable.card}</th>
          <th scope="col">{say.confusionTable.heard}</th>
          <th scope="col">{say.confusionTable.howOften}</th>
          {named && <th scope="col">{say.confusionTable.who}</th>}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ card, heard, count, children }) => (
          <tr key={`${card} ${heard}`}>
            <th scope="row">
              <SoundedCard id={card} />
            </th>
            <td>{heardSaid(heard, card, notation)}</td>
            <td>
              <span class="count-bar" aria-hidden="true">
                {Array.from({ length: Math.min(count, 12) }, (_, at) => (
                  <span key={at} />
                ))}
              </span>{' '}
              {say.confusionTable.times(count)}
            </td>
            {named && <td>{namesSaid(children.map(who), 6)}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface Gathered {
  readonly card: CardId;
  readonly heard: string;
  readonly count: number;
  readonly children: readonly (ChildId | null)[];
}

/** The same slip of several children as one, most often first. */
function gathered(confusions: readonly Confusion[]): readonly Gathered[] {
  const all = new Map<string, Gathered>();
  for (const { card, heard, count, child } of confusions) {
    const key = `${card} ${heard}`;
    const before = all.get(key);
    all.set(key, {
      card,
      heard,
      count: count + (before?.count ?? 0),
      children: [...(before?.children ?? []), child],
    });
  }
  return [...all.values()].sort((one, other) => other.count - one.count);
}

function who(child: ChildId | null): string {
  return child === null ? say.confusionTable.allTogether : nameOf({ of: 'child', id: child });
}
