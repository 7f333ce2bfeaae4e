import { boardValue } from './board-model.ts';
import { cardsAs, cardsLeft, pileStatus } from './card-numbers.ts';
import { type Instance, type Seen, stakesOf } from './choose-card.ts';
import { FREE, IN } from './pairs.ts';
import { isServed } from './place-groups.ts';
import { bestOf, refine } from './refine-board.ts';

type Piles = readonly (readonly number[])[];

/** A board and what it is worth. */
export interface Incumbent {
  readonly piles: Piles;
  readonly value: number;
}

/** Builds boards along a search and keeps the best. */
export interface Builder {
  readonly best: () => Incumbent;
  /** Builds a board from what the bound chose and as many of the cards between as fit. */
  readonly build: (seen: Omit<Seen, 'live'>) => void;
  /** With at most one pile still open, takes its best cards; false when more are open. */
  readonly finish: (status: Uint8Array) => boolean;
}

/** Makes a builder for one search. It begins with a board that serves all groups. */
export function makeBuilder(known: Instance, start: Incumbent): Builder {
  const { model, numbers, pairing } = known;
  const { sizes, limits, pinGroups = [] } = model;
  let best = start;

  return {
    best: () => best,
    build(seen) {
      const settled = cardsSettledIn(seen.status);
      const laid = sizes.map((_, pile) => {
        if (pile === pairing.first) return seen.begin;
        if (pile === pairing.second) return seen.end;
        const left = cardsLeft(pileStatus(numbers, seen.status, pile));
        const room = limits[pile] as number;
        return left.length <= room ? left : weightiest(seen, pile, settled[pile] ?? [], left, room);
      });
      offer(refine({ ...model, pinned: settled }, laid, pairing.second).piles);
    },
    finish(status) {
      const open = sizes.flatMap((_, pile) =>
        pileStatus(numbers, status, pile).includes(FREE) ? [pile] : [],
      );
      if (open.length > 1) return false;
      const settled = cardsSettledIn(status);
      const [pile] = open;
      if (pile === undefined) offer(settled);
      else {
        const own = pileStatus(numbers, status, pile);
        const cards = bestOf({ ...model, pinned: settled }, settled, pile, own);
        if (cards) offer(settled.map((lying, at) => (at === pile ? cards : lying)));
      }
      return true;
    },
  };

  function offer(piles: Piles): void {
    const value = boardValue(model, piles);
    if (value > best.value && pinGroups.every((group) => isServed(group, piles))) {
      best = { piles, value };
    }
  }

  function cardsSettledIn(status: Uint8Array): readonly number[][] {
    return sizes.map((_, pile) => cardsAs(pileStatus(numbers, status, pile), IN));
  }

  /** The cards settled in a pile, and of those left the ones with most at stake that still fit. */
  function weightiest(
    seen: Omit<Seen, 'live'>,
    pile: number,
    settled: readonly number[],
    left: readonly number[],
    room: number,
  ): readonly number[] {
    const stakes = stakesOf(known, seen);
    const stakeOf = (card: number): number =>
      stakes[(numbers.starts[pile] as number) + card] as number;
    const more = left
      .filter((card) => !settled.includes(card))
      .sort((one, other) => stakeOf(other) - stakeOf(one));
    return [...settled, ...more].slice(0, room);
  }
}
