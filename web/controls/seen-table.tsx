import './seen-table.css';
import type { ComponentChildren } from 'preact';
import type { MapCell } from '../../core/facts/class-map.ts';
import { allHeardSaid } from '../../core/facts/heard-said.ts';
import { settings } from '../state/settings.ts';
import { LastThree } from './last-three.tsx';
import { Sign } from './sign.tsx';
import { SoundedCard } from './sounded-card.tsx';

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
  const { notation } = settings.value;
  return (
    <table class="figures seen-table">
      <thead>
        <tr>
          <th scope="col">Card</th>
          <th scope="col">Last 3</th>
          <th scope="col">Right</th>
          <th scope="col">Heard instead</th>
          <th scope="col">Likely right, of 10</th>
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
            <td>
              {cell.seen.right} of {cell.seen.right + cell.seen.missed}
            </td>
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

/** An interval as a bar on a line from 0 to 10, the estimate a dot on it. */
function Range({ p, low, high }: MapCell['estimate']) {
  const at = (share: number) => 3 + share * 94;
  return (
    <svg class="range" viewBox="0 0 100 12" aria-hidden="true">
      <path class="range-line" d="M3 6h94M3 2v8M50 3v6M97 2v8" />
      <path class="range-bar" d={`M${at(low)} 6H${Math.max(at(high), at(low) + 0.5)}`} />
      <circle cx={at(p)} cy="6" r="3.6" />
    </svg>
  );
}

function rangeSaid({ low, high }: MapCell['estimate']): string {
  const [from, to] = [Math.round(low * 10), Math.round(high * 10)];
  return from === to ? `${from}` : `${from}–${to}`;
}
