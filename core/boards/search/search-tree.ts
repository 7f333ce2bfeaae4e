/** Branch and bound over the cards of a board: the tree that search.ts describes. */

import type { BoardModel } from './board-model.ts';
import { type Incumbent, makeBuilder } from './build-boards.ts';
import { numberCards, pileStatus } from './card-numbers.ts';
import { cardsToDecide, cardToDecide, type Instance, type Seen } from './choose-card.ts';
import { smallestForbidden } from './forbidden.ts';
import { type BranchChoice, makeLookAhead, undecided } from './look-ahead.ts';
import { boundPairs } from './pair-bound.ts';
import { makeProjection, type PairGains } from './pair-gains.ts';
import { choosePairing } from './pairing.ts';
import { IN, OUT, type Prices } from './pairs.ts';
import { openGroupCard, settleGroups } from './place-groups.ts';
import { settleClauses, takeUndisputed } from './settle-clauses.ts';

/** What a search found. `bound` is proven: no board is worth more. */
export interface Explored extends Incumbent {
  readonly bound: number;
  readonly nodes: number;
}

const ROOT_STEPS = 80;
const NODE_STEPS = 8;
const AHEAD_STEPS = 3;
/** A board is built from every so many-th step of the bound. */
const LOOK_EVERY = 12;
/** So many nodes are searched without looking ahead: most boards are proven by then. */
const PLAIN_NODES = 240;
/** So many cards of each kind are looked at one step ahead. */
const MOST_AHEAD = 3;

/**
 * Searches for boards worth more than `start`, which must be worth 0 or more
 * and serve all groups. `nodeLimit` counts every subproblem that was bounded.
 */
export function searchTree(
  model: BoardModel,
  start: Incumbent,
  { nodeLimit }: { readonly nodeLimit: number },
): Explored {
  const { sizes, limits, pinned } = model;
  const groups = model.pinGroups ?? [];
  const numbers = numberCards(sizes);
  const clauses = smallestForbidden(model);
  const root = new Uint8Array(numbers.total);
  pinned.forEach((cards, pile) => {
    for (const card of cards) pileStatus(numbers, root, pile)[card] = IN;
  });
  const pairing = choosePairing(model, numbers, clauses, root);
  const known: Instance = { model, numbers, clauses, pairing };
  const { first, second } = pairing;
  const project = makeProjection(model, numbers, clauses, pairing);
  const pairCount = (sizes[first] as number) * (sizes[second] as number);
  const aside = emptyPrices();
  const builder = makeBuilder(known, start);
  const bestValue = (): number => builder.best().value;
  const lookAhead = makeLookAhead(numbers.total);

  let nodes = 0;
  let openBound = -1;
  let limit = Math.min(nodeLimit, PLAIN_NODES);
  const prices = emptyPrices();
  const all = Int32Array.from({ length: clauses.count }, (_, clause) => clause);

  branch(root, all, prices, ROOT_STEPS, Infinity, false);
  if (openBound > bestValue() && nodes < nodeLimit) {
    const left = openBound;
    openBound = -1;
    limit = nodeLimit;
    branch(root, all, prices, NODE_STEPS, left, true);
  }
  return { ...builder.best(), bound: Math.max(bestValue(), openBound), nodes };

  function branch(
    status: Uint8Array,
    given: Int32Array,
    handed: Prices,
    steps: number,
    above: number,
    ahead: boolean,
  ): void {
    if (above <= bestValue()) return;
    if (nodes >= limit && above < Infinity) {
      openBound = Math.max(openBound, above);
      return;
    }
    nodes++;
    let begin: readonly number[] = [];
    let end: readonly number[] = [];
    const seen = boundBelow(status, given, handed, steps, (pairs, b, e) => {
      begin = b;
      end = e;
      builder.build({ status, begin, end, pairs });
    });
    const bound = Math.min(above, seen.bound);
    if (bound <= bestValue()) return;
    const live = settle(status, seen.live);
    if (!live) return;
    const group = openGroupCard(numbers, status, groups);
    if (group < 0 && builder.finish(status)) return;
    const node: Seen = { status, live, begin, end, pairs: seen.pairs };
    const choice = group >= 0 ? undecided(group, bound) : choose(node, handed, bound, ahead);
    if (choice === 'done') return;
    if (choice === 'settled') {
      branch(status, live, handed, AHEAD_STEPS, bound, ahead);
      return;
    }
    for (const [standing, below] of [
      [IN, choice.within],
      [OUT, choice.without],
    ] as const) {
      const child = status.slice();
      child[choice.card] = standing;
      branch(child, live, copyPrices(handed, emptyPrices()), NODE_STEPS, below, ahead);
    }
  }

  /** The card to branch on, or what looking ahead settled instead. */
  function choose(node: Seen, handed: Prices, bound: number, ahead: boolean): BranchChoice {
    if (!ahead) return undecided(cardToDecide(known, node), bound);
    return lookAhead({
      status: node.status,
      bound,
      best: bestValue(),
      cards: () => cardsToDecide(known, node, MOST_AHEAD),
      bounded(card, standing) {
        nodes++;
        const child = node.status.slice();
        child[card] = standing;
        return boundBelow(child, node.live, copyPrices(handed, aside), AHEAD_STEPS).bound;
      },
    });
  }

  /** Settles what follows, and bounds all boards below; -1 when there is none. */
  function boundBelow(
    status: Uint8Array,
    given: Int32Array,
    handed: Prices,
    steps: number,
    lookAt: (pairs: PairGains, begin: readonly number[], end: readonly number[]) => void = () => {},
  ): { readonly bound: number; readonly live: Int32Array; readonly pairs: PairGains } {
    const live = settle(status, given);
    const pairs = live ? project(status, live) : NO_PAIRS;
    if (!live) return { bound: -1, live: given, pairs };
    const sideOf = (pile: number) => ({
      status: pileStatus(numbers, status, pile),
      limit: limits[pile] as number,
    });
    const bound = boundPairs({ begin: sideOf(first), end: sideOf(second), ...pairs }, handed, {
      steps,
      best: bestValue,
      lookEvery: LOOK_EVERY,
      lookAt: (begin, end) => lookAt(pairs, begin, end),
    });
    return { bound, live, pairs };
  }

  function settle(status: Uint8Array, given: Int32Array): Int32Array | null {
    if (!settleGroups(numbers, status, groups)) return null;
    const live = settleClauses(numbers, clauses, limits, status, given);
    if (live) takeUndisputed(numbers, clauses, limits, status, live);
    return live;
  }

  function emptyPrices(): Prices {
    return { lambda: new Float64Array(pairCount), mu: new Float64Array(pairCount) };
  }
}

const NO_PAIRS: PairGains = { gains: new Int32Array(0), clash: new Uint8Array(0) };

function copyPrices(from: Prices, to: Prices): Prices {
  to.lambda.set(from.lambda);
  to.mu.set(from.mu);
  return to;
}
