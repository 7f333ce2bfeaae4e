import type { BoardModel } from './board-model.ts';
import { type CardNumbers, pileStatus } from './card-numbers.ts';
import type { Clauses } from './forbidden.ts';
import { boundPairs } from './pair-bound.ts';
import { makeProjection, type Pairing, pairUp } from './pair-gains.ts';

const TRIAL_STEPS = 30;

/**
 * The two piles that bound a board's value best. Of three piles these are the
 * outer two, since vowels are few and mostly all stay. Of more piles, a trial of
 * the bound at the root decides.
 */
export function choosePairing(
  model: BoardModel,
  numbers: CardNumbers,
  clauses: Clauses,
  root: Uint8Array,
): Pairing {
  const piles = model.sizes.length;
  if (piles <= 3) return pairUp(piles, 0, piles - 1);
  let chosen = pairUp(piles, 0, 1);
  let lowest = Infinity;
  for (let first = 0; first < piles; first++) {
    for (let second = first + 1; second < piles; second++) {
      const pairing = pairUp(piles, first, second);
      const reached = trial(pairing);
      if (reached >= lowest) continue;
      lowest = reached;
      chosen = pairing;
    }
  }
  return chosen;

  function trial(pairing: Pairing): number {
    const { gains, clash } = makeProjection(
      model,
      numbers,
      clauses,
      pairing,
    )(root, new Int32Array(0));
    const sideOf = (pile: number) => ({
      status: pileStatus(numbers, root, pile).slice(),
      limit: model.limits[pile] as number,
    });
    const prices = {
      lambda: new Float64Array(gains.length),
      mu: new Float64Array(gains.length),
    };
    return boundPairs(
      { begin: sideOf(pairing.first), end: sideOf(pairing.second), gains, clash },
      prices,
      { steps: TRIAL_STEPS, best: () => 0, lookAt: () => {}, lookEvery: TRIAL_STEPS },
    );
  }
}
