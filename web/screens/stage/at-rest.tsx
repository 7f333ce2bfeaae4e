import './at-rest.css';
import type { Drill } from '../../../core/drills/drill.ts';
import { CardFace } from '../../controls/card.tsx';

/** So many cards have room at full size; of more all letters shrink together. */
const ROOM = 24;

/**
 * The end as the children see it: the day's cards put down in their heaps on the line, and no words. Of a
 * warm-up without a board, the cards that were shown.
 */
export function AtRest({ drill: { board, visual } }: { readonly drill: Drill }) {
  const piles = board.piles.filter((pile) => pile.length > 0);
  const heaps = piles.length > 0 ? piles : [visual];
  const count = heaps.flat().length;
  return (
    <div
      class="at-rest"
      aria-hidden="true"
      style={{ '--shrink': Math.min(1, Math.sqrt(ROOM / Math.max(1, count))) }}
    >
      {heaps.map((heap, place) => (
        <div key={place} class="heap">
          {heap.map((id) => (
            <CardFace key={id} id={id} />
          ))}
        </div>
      ))}
      <svg class="rest-line" aria-hidden="true" viewBox="0 0 1000 16" preserveAspectRatio="none">
        <path
          d="M6 7C300 11 550 4 760 8S950 11 994 9"
          pathLength={1}
          vector-effect="non-scaling-stroke"
        />
      </svg>
    </div>
  );
}
