import './range.css';
import type { Estimate } from '../../core/learners/estimate.ts';

/** An interval as a bar on a line from 0 to 10, the estimate a dot on it. */
export function Range({ p, low, high }: Pick<Estimate, 'p' | 'low' | 'high'>) {
  const at = (share: number) => 3 + share * 94;
  return (
    <svg class="range" viewBox="0 0 100 12" aria-hidden="true">
      <path class="range-line" d="M3 6h94M3 2v8M50 3v6M97 2v8" />
      <path class="range-bar" d={`M${at(low)} 6H${Math.max(at(high), at(low) + 0.5)}`} />
      <circle cx={at(p)} cy="6" r="3.6" />
    </svg>
  );
}
