/**
 * The best board of four and more piles.
 *
 * Problem: as in search.ts, with further piles: a second consonant, an ending,
 * a second syllable.
 *
 * Method: three piles, those of most candidates, are left to the exact search;
 * of the others each card is in, out or free. With all of them settled their
 * combinations add up to a model of three piles. While some are free, the same
 * sum over cards in and free, without what only a free card forbids and with
 * the best that fit under a limit, bounds all boards below: branch and bound
 * over the other piles' cards, each node one search of three piles.
 *
 * Complexity: exponential in the cards of the other piles at worst; a card that
 * nothing forbids and no limit is about is taken at once, which settles most.
 * `nodeLimit` counts the nodes of the inner searches; when it is spent, the best
 * board so far is returned with the bound that is proven.
 *
 * Alternatives: one linear program over all piles grows with the product of all
 * of them (HiGHS, the tests' oracle); a search that branches on all piles alike
 * has no bound as good as the one for three.
 */
import { growBoards, refine } from './grow-board.ts';
import {
  asThree,
  combinationsOf,
  type ManyChoice,
  type ManyModel,
  manyValue,
  type NoManyBoard,
  stridesOf,
} from './many-model.ts';
import { FREE, IN, OUT } from './pairs.ts';
import { solveBoard } from './search.ts';

/** Solves a model of any number of piles; three and fewer exactly, unless stopped by `nodeLimit`. */
export function solveMany(
  model: ManyModel,
  options: { readonly nodeLimit?: number } = {},
): ManyChoice | NoManyBoard {
  const { sizes, limits, pinned } = model;
  if (sizes.length <= 3) {
    const found = solveBoard(asThree(model), options);
    if (found.kind !== 'found') return found;
    return { ...found, chosen: found.chosen.slice(0, sizes.length) };
  }
  const crowded = pinned.findIndex((cards, pile) => cards.length > (limits[pile] as number));
  if (crowded >= 0) return { kind: 'too-many-pins', pile: crowded };
  const strides = stridesOf(sizes);
  const clash = combinationsOf(strides, pinned).find((at) => model.forbidden[at]);
  if (clash !== undefined) {
    return {
      kind: 'pins-clash',
      combination: sizes.map((size, pile) => Math.floor(clash / (strides[pile] as number)) % size),
    };
  }

  const groups = model.somewhere ?? [];
  const bySize = sizes
    .map((_, pile) => pile)
    .sort((a, b) => (sizes[b] as number) - (sizes[a] as number) || a - b);
  const core = bySize.slice(0, 3).sort((a, b) => a - b);
  const extra = bySize.slice(3).sort((a, b) => a - b);
  const nodeLimit = options.nodeLimit ?? Infinity;
  const forbids = forbiddersOf(model);
  let best: { piles: readonly (readonly number[])[]; value: number } | null = null;
  let nodes = 0;
  let openBound = -1;
  const offer = (piles: readonly (readonly number[])[], value: number): void => {
    if (value < 0 || (best && value <= best.value)) return;
    if (groups.every((group) => group.some(([pile, card]) => piles[pile]?.includes(card)))) {
      best = { piles, value };
    }
  };
  const bestValue = (): number => best?.value ?? -1;

  offer(pinned, manyValue(model, pinned));
  for (const { piles, value } of growBoards(model, core[0] as number)) offer(piles, value);
  const root = sizes.map((size, pile) => {
    const status = new Uint8Array(extra.includes(pile) ? size : 0);
    for (const card of pinned[pile] ?? []) if (extra.includes(pile)) status[card] = IN;
    return status;
  });
  branch(root, Infinity);
  if (!best) return { kind: 'no-place', places: groups };
  const { piles, value } = best as { piles: readonly (readonly number[])[]; value: number };
  const bound = Math.max(value, openBound);
  return { kind: 'found', chosen: piles, value, bound, optimal: bound === value, nodes };

  function branch(statuses: readonly Uint8Array[], above: number): void {
    if (nodes >= nodeLimit) {
      openBound = Math.max(openBound, above);
      return;
    }
    settleExtras(statuses);
    const collapsed = collapse(statuses);
    const left = nodeLimit === Infinity ? {} : { nodeLimit: Math.max(1, nodeLimit - nodes) };
    const found = solveBoard(asThree(collapsed), left);
    if (found.kind !== 'found') {
      nodes++;
      return;
    }
    nodes += Math.max(1, found.nodes);
    const bound = Math.min(above, found.bound);
    if (bound <= bestValue()) return;
    const laid = sizes.map((_, pile) => {
      const at = core.indexOf(pile);
      return at >= 0
        ? (found.chosen[at as 0 | 1 | 2] as readonly number[])
        : inCards(statuses[pile]);
    });
    const own = manyValue(model, laid);
    offer(laid, own);
    const better = refine(model, laid);
    offer(better.piles, better.value);
    const free = mostWanted(statuses, laid);
    if (!free) {
      if (!found.optimal) openBound = Math.max(openBound, bound);
      return;
    }
    if (bound <= bestValue()) return;
    for (const status of [IN, OUT]) {
      const child = statuses.map((side) => side.slice());
      (child[free[0]] as Uint8Array)[free[1]] = status;
      branch(child, bound);
    }
  }

  /** A full pile takes no more; where all fit, a card that forbids nothing is taken. */
  function settleExtras(statuses: readonly Uint8Array[]): void {
    for (const pile of extra) {
      const status = statuses[pile] as Uint8Array;
      const limit = limits[pile] as number;
      const chosen = inCards(status).length;
      const open = status.reduce((sum, one) => sum + (one === FREE ? 1 : 0), 0);
      for (let card = 0; card < status.length; card++) {
        if (status[card] !== FREE) continue;
        if (chosen >= limit) status[card] = OUT;
        else if (chosen + open <= limit && !forbids[pile]?.[card]) status[card] = IN;
      }
    }
  }

  /** The model of the three core piles that bounds every board below a node. */
  function collapse(statuses: readonly Uint8Array[]): ManyModel {
    const kept = extra.map((pile) => notOut(statuses[pile] as Uint8Array));
    const rooms = extra.map((pile, at) => Math.min(limits[pile] as number, kept[at]?.length ?? 0));
    const most = rooms.reduce((all, room) => all * room, 1);
    const extras = combinationsOf(
      extra.map((pile) => strides[pile] as number),
      kept,
    );
    const settled = new Set(
      combinationsOf(
        extra.map((pile) => strides[pile] as number),
        extra.map((pile) => inCards(statuses[pile])),
      ),
    );
    const coreSizes = core.map((pile) => sizes[pile] as number);
    const combos = combinationsOf(
      core.map((pile) => strides[pile] as number),
      coreSizes.map((size) => Array.from({ length: size }, (_, card) => card)),
    );
    const weights = new Int32Array(combos.length);
    const forbidden = new Uint8Array(combos.length);
    combos.forEach((from, to) => {
      const gains: number[] = [];
      for (const offset of extras) {
        if (model.forbidden[from + offset] && settled.has(offset)) forbidden[to] = 1;
        gains.push(model.weights[from + offset] as number);
      }
      if (extras.length > most) gains.sort((one, other) => other - one).length = most;
      weights[to] = forbidden[to] ? 0 : gains.reduce((sum, gain) => sum + gain, 0);
    });
    const pick = <T>(values: readonly T[]): T[] => core.map((pile) => values[pile] as T);
    return {
      sizes: coreSizes,
      weights,
      forbidden,
      limits: pick(limits),
      pinned: pick(pinned),
      ...groupsOf(statuses),
    };
  }

  /** Groups that only the core can still serve. */
  function groupsOf(statuses: readonly Uint8Array[]): Pick<ManyModel, 'somewhere'> {
    const open = groups.flatMap((group) => {
      const served = group.some(
        ([pile, card]) => extra.includes(pile) && statuses[pile]?.[card] !== OUT,
      );
      if (served) return [];
      return [
        group
          .filter(([pile]) => core.includes(pile))
          .map(([pile, card]) => [core.indexOf(pile), card] as const),
      ];
    });
    return open.length > 0 ? { somewhere: open } : {};
  }

  /** The free card whose words weigh most with the core as it lies; null when none is free. */
  function mostWanted(
    statuses: readonly Uint8Array[],
    laid: readonly (readonly number[])[],
  ): readonly [pile: number, card: number] | null {
    let wanted: readonly [number, number] | null = null;
    let most = -1;
    for (const pile of extra) {
      (statuses[pile] as Uint8Array).forEach((status, card) => {
        if (status !== FREE) return;
        const others = laid.map((cards, at) => {
          if (at === pile) return [card];
          return core.includes(at) ? cards : notOut(statuses[at] as Uint8Array);
        });
        let sum = 0;
        for (const at of combinationsOf(strides, others)) sum += model.weights[at] as number;
        if (sum <= most) return;
        most = sum;
        wanted = [pile, card];
      });
    }
    return wanted;
  }
}

/** For each card whether it is part of a forbidden combination. */
function forbiddersOf({ sizes, forbidden }: ManyModel): readonly Uint8Array[] {
  const strides = stridesOf(sizes);
  const found = sizes.map((size) => new Uint8Array(size));
  forbidden.forEach((stopped, at) => {
    if (!stopped) return;
    found.forEach((pile, own) => {
      pile[Math.floor(at / (strides[own] as number)) % pile.length] = 1;
    });
  });
  return found;
}

function inCards(status: Uint8Array | undefined): number[] {
  return [...(status ?? [])].flatMap((one, card) => (one === IN ? [card] : []));
}

function notOut(status: Uint8Array): number[] {
  return [...status].flatMap((one, card) => (one === OUT ? [] : [card]));
}
