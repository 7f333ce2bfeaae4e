/** How far a board can fulfil what is wished of a run, each wish looked at alone. */
import { contrastTurnsAsked, mostContrastTurns } from './contrast-turns.ts';
import type { RunGraph } from './graph.ts';
import type { RunGoal } from './score.ts';
import type { RunWishes } from './wishes.ts';
import type { SortCounts } from './words.ts';

/** What no run over this board can exceed: first the length, then the shares of that length. */
export function makeRunGoal(graph: RunGraph, wishes: RunWishes): RunGoal {
  const flips = Math.min(wishes.flips, furthest(graph));
  const wantsFocus = wishes.focusShare !== undefined && (wishes.focus ?? []).length > 0;
  return {
    flips,
    real: nearest(flips, wishes.realShare, graph.kinds),
    focused: wantsFocus ? nearest(flips, wishes.focusShare, graph.focuses) : null,
    cards: Math.min(new Set(graph.cardAt).size, flips === 0 ? 0 : flips + graph.piles - 1),
    contrasts: Math.min(Math.max(0, flips - 1), graph.contrasts),
    contrastTurns: Math.min(contrastTurnsAsked(flips), mostContrastTurns(graph, graph, flips)),
    risen: graph.hard === null ? 0 : flips,
  };
}

/** The most spellings that one word leads to; 0 on a board without words. */
function furthest({ reach }: RunGraph): number {
  return reach.reduce((most, count) => Math.max(most, count), 0);
}

/** How many of so many flips can be of a sort, as near to the share as there are spellings. */
function nearest(flips: number, share: number, { ofOneSort, ofTheOther }: SortCounts): number {
  return Math.min(Math.max(Math.round(flips * share), flips - ofTheOther), ofOneSort);
}
