/** How far a board can grant each wish for a run, taken by itself. */
import { contrastTurnsSought, mostContrastTurns } from './contrast-turns.ts';
import type { RunGraph } from './graph.ts';
import type { RunGoal } from './score.ts';
import type { RunWishes } from './wishes.ts';
import type { SortCounts } from './words.ts';

/** Upper bounds for every run over this board: its length, then the shares of that length. */
export function makeRunGoal(graph: RunGraph, wishes: RunWishes): RunGoal {
  const flips = Math.min(wishes.flips, furthest(graph));
  const wantsFocus = wishes.focusShare !== undefined && (wishes.focus ?? []).length > 0;
  return {
    flips,
    real: nearest(flips, wishes.realShare, graph.kinds),
    focused: wantsFocus ? nearest(flips, wishes.focusShare, graph.focuses) : null,
    due: Math.min(leastDue(flips, wishes), graph.dueSpellings),
    cards: Math.min(new Set(graph.cardAt).size, flips === 0 ? 0 : flips + graph.piles - 1),
    contrasts: Math.min(Math.max(0, flips - 1), graph.contrasts),
    contrastTurns: Math.min(contrastTurnsSought(flips), mostContrastTurns(graph, graph, flips)),
    risen: graph.hard === null ? 0 : flips,
  };
}

/** In how many of these flips one of the cards is to be shown that should come in at least a share of them. */
export function leastDue(flips: number, { atLeast }: RunWishes): number {
  return atLeast && atLeast.cards.length > 0 ? Math.ceil(flips * atLeast.share) : 0;
}

/** The most spellings that one word leads to; 0 on a board without words. */
function furthest({ reach }: RunGraph): number {
  return reach.reduce((most, count) => Math.max(most, count), 0);
}

/** How many of these flips can be of one sort: as near to the share as the spellings allow. */
function nearest(flips: number, share: number, { ofOneSort, ofTheOther }: SortCounts): number {
  return Math.min(Math.max(Math.round(flips * share), flips - ofTheOther), ofOneSort);
}
