/**
 * What the outcome of one card says of what is common to many, handed on from one step to the next
 * (shifts.ts): of what adds to strength, and of what priors stand around, the gradient and how certain
 * it is.
 */
export const PULL = 0;
export const CERTAINTY = 1;
export const MEAN_PULL = 2;
export const MEAN_CERTAINTY = 3;

/** Room for the pulls of one card. */
export function makePulls(): Float64Array {
  return new Float64Array(4);
}
