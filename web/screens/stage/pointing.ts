import type { Act } from '../../../core/warm-up/standing.ts';

/** Where the row ends, how wide the screen is, which hand points, whether there is a row to sweep. */
export interface PointingGround {
  readonly low: number;
  readonly width: number;
  readonly hand: 'left' | 'right';
  readonly sweepable: boolean;
}

/** The share of the width, on the far side of her hand, that goes back. */
const backShare = 0.25;

/** What a tap at a point asks for: under the row the sweep, at the far side back, else next. */
export function zoneOf(
  { clientX, clientY }: { readonly clientX: number; readonly clientY: number },
  { low, width, hand, sweepable }: PointingGround,
): Act {
  if (sweepable && clientY > low) return 'sweep';
  const fromFarSide = hand === 'right' ? clientX : width - clientX;
  return fromFarSide < width * backShare ? 'back' : 'next';
}
