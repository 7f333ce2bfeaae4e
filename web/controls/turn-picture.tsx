import './turn-picture.css';
import type { Turn } from '../../core/warm-up/standing.ts';
import { say } from './wording.ts';

const names: Readonly<Record<Turn, string>> = {
  my: say.turnPicture.myTurn,
  our: say.turnPicture.ourTurn,
  your: say.turnPicture.yourTurn,
};

/**
 * Whose turn it is, without a word: one tall figure, she with the children, or
 * the children. Who waits is only an outline.
 */
export function TurnPicture({
  turn,
  class: extra = '',
}: {
  readonly turn: Turn;
  readonly class?: string;
}) {
  const she = turn !== 'your';
  const they = turn !== 'my';
  return (
    <svg class={`turn-picture ${extra}`} viewBox="0 0 200 100" role="img" aria-label={names[turn]}>
      <Figure x={44} foot={96} tall={84} on={she} />
      <Figure x={98} foot={96} tall={56} on={they} />
      <Figure x={136} foot={96} tall={62} on={they} />
      <Figure x={174} foot={96} tall={54} on={they} />
    </svg>
  );
}

/** A head and shoulders, standing. */
function Figure({
  x,
  foot,
  tall,
  on,
}: {
  readonly x: number;
  readonly foot: number;
  readonly tall: number;
  readonly on: boolean;
}) {
  const head = tall * 0.19;
  const wide = tall * 0.25;
  const top = foot - tall;
  const shoulder = top + head * 2 + tall * 0.09;
  return (
    <g class={on ? 'on' : 'outlined'}>
      <circle cx={x} cy={top + head} r={head} />
      <path
        d={`M${x - wide} ${foot}V${shoulder + wide}a${wide} ${wide} 0 0 1 ${wide * 2} 0V${foot}Z`}
      />
    </g>
  );
}
