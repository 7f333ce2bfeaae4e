import './last-three.css';
import type { CardFacts } from '../../core/facts/card-facts.ts';
import { say } from './wording.ts';

/** The last three readings, the oldest first: an upright tick for right, a cross for missed. */
export function LastThree({ last }: Pick<CardFacts, 'last'>) {
  return (
    <span class="last-three">
      <span class="for-ears">{last.length === 0 ? say.lastThree.notRead : last.join(', ')}</span>
      {last.map((outcome, at) => (
        <svg
          key={at}
          class={outcome === 'right' ? 'hit' : 'miss'}
          viewBox="0 0 10 12"
          aria-hidden="true"
        >
          <path d={outcome === 'right' ? 'M5 1v10' : 'M1.5 2.5l7 7m0-7l-7 7'} />
        </svg>
      ))}
    </span>
  );
}
