import { soundStyle } from '../state/accent.ts';
import './seen-table.css';
import './figures.css';
import type { ComponentChildren } from 'preact';
import type { MapCell } from '../../core/facts/class-map.ts';
import { allHeardSaid } from '../../core/facts/heard-said.ts';
import { LastThree } from './last-three.tsx';
import { Range } from './range.tsx';
import { Sign } from './sign.tsx';
import { SoundedCard } from './sounded-card.tsx';
import { say } from './wording.ts';

/**
 * Cards as a table: what was seen of each goes first, then what is estimated. `more` adds columns
 * behind: their names, and of each card what stands in them.
 */
export function SeenTable({
  cells,
  more,
}: {
  readonly cells: readonly MapCell[];
  readonly more?: {
    readonly names: readonly string[];
    readonly of: (cell: MapCell) => readonly ComponentChildren[];
  };
}) {
  const notation = soundStyle.value;
  return (
    <table class="figures seen-table">
      <thead>
        <tr>
          <th scope="col">{say.seenTable.card}</th>
          <th scope="col">{say.seenTable.last3}</th>
          <th scope="col">{say.seenTable.right}</th>
          <th scope="col">{say.seenTable.heardInstead}</th>
          <th scope="col">{say.seenTable.likelyRightOf10}</th>
          {more?.names.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {cells.map((cell) => (
          <tr key={cell.card}>
            <th scope="row">
              <SoundedCard id={cell.card} />
            </th>
            <td>
              <LastThree last={cell.seen.last} />
            </td>
            <td>{say.seenTable.of(cell.seen.right, cell.seen.right + cell.seen.missed)}</td>
            <td class="heard">{allHeardSaid(cell.seen, notation)}</td>
            <td class="likely">
              <Sign word={cell.word} /> <span class="for-ears">{cell.word}, </span>
              <Range {...cell.estimate} /> {rangeSaid(cell.estimate)}
            </td>
            {more?.of(cell).map((child, at) => (
              <td key={more.names[at]}>{child}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function rangeSaid({ low, high }: MapCell['estimate']): string {
  const [from, to] = [Math.round(low * 10), Math.round(high * 10)];
  return from === to ? `${from}` : `${from}–${to}`;
}
