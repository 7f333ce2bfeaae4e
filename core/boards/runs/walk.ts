/**
 * One walk over the graph of a board. At each flip it scores every one-card
 * change and takes the best. A change scores when it suits the plan of real and
 * nonsense words and of focus cards; when it shows a card not seen yet (more so
 * the fewer flips are left); when it leaves a way on, and a way to what is due
 * next; when it turns another pile than last time; and when nonsense sounds good.
 * Chance decides between changes that are alike. The points were tried out, not
 * derived. O(flips × edges of a node²) at worst, which is rare.
 */
import type { Random } from '../../random.ts';
import { edgeBetween, type RunGraph } from './graph.ts';
import { offRise } from './hardness.ts';
import { makeRunPlan, noteSort } from './plan.ts';
import { MOST_IN_A_ROW, type RunGoal } from './score.ts';

/** How a walk goes about it. */
export interface WalkWay {
  /** It takes no word that is held further in reserve than this. */
  readonly reserve: number;
  /** It ignores the rise in hardness: where too few words lead up, there is a run all the same. */
  readonly level: boolean;
}

/**
 * A path of at most `goal.flips` nodes. It begins with the path given, if that is
 * not empty.
 */
export function takeWalk(
  graph: RunGraph,
  goal: RunGoal,
  random: Random,
  { reserve: mostReserve, level }: WalkWay,
  begun: readonly number[] = [],
): readonly number[] {
  const { isReal, isFocused, isDue, reserve, spelling, ease, hard, piles, cardAt } = graph;
  const { firstEdge, leadsTo, turns, contrast, reach } = graph;
  if (goal.flips === 0) return [];
  const kinds = makeRunPlan(goal.flips, goal.real, random);
  const focuses = goal.focused === null ? [] : makeRunPlan(goal.flips, goal.focused, random);
  const dues = goal.due === 0 ? [] : makeRunPlan(goal.flips, goal.due, random);
  const used = new Uint8Array(graph.spellings);
  const seenCards = new Uint8Array(graph.cards);
  const contrasted = new Uint8Array(graph.contrasts);
  const likingOf = new Float64Array(piles);
  const path: number[] = [];
  let unseen = goal.cards;
  let turnsLeft = goal.contrastTurns;
  let realLeft = goal.real;
  let focusedLeft = goal.focused ?? 0;
  let dueLeft = goal.due;
  let kindDue = KIND_DUE;
  let focusDue = FOCUS_DUE;
  let lastPile = -1;
  let inARow = 0;

  for (const node of begun) take(node);
  for (let at = begun.at(-1) ?? start(); at >= 0 && path.length < goal.flips; ) {
    if (path.length > 0) at = step(at);
    if (at >= 0) take(at);
  }
  return path;

  function take(node: number): void {
    noteTurn(node);
    noteSort(kinds, path.length, isReal[node] as number);
    noteSort(focuses, path.length, isFocused[node] as number);
    noteSort(dues, path.length, isDue[node] as number);
    realLeft -= isReal[node] as number;
    focusedLeft -= isFocused[node] as number;
    dueLeft -= isDue[node] as number;
    path.push(node);
    used[spelling[node] as number] = 1;
    for (let pile = 0; pile < piles; pile++) {
      const card = cardAt[node * piles + pile] as number;
      if (seenCards[card]) continue;
      seenCards[card] = 1;
      unseen--;
    }
  }

  function mayTake(node: number): boolean {
    return !used[spelling[node] as number] && (reserve[node] as number) <= mostReserve;
  }

  /** How well a node suits what is due at a place, the next or a later one. */
  function suits(node: number, place: number): number {
    let kind = kinds[place] === isReal[node] ? kindDue : 0;
    if (isDue[node] && dues[place] === 1) kind += DAY_DUE * urgency(dueLeft, goal.flips - place);
    return kind + (focuses[place] === isFocused[node] ? focusDue : 0);
  }

  function start(): number {
    let chosen = -1;
    let most = -Infinity;
    if (graph.index.length === 0) return -1;
    // Half of the walks look at all these beginnings and the others at fewer, so that not all begin alike.
    const passed = random.below(2) * random.below(STARTS);
    for (let tries = passed; tries < STARTS; tries++) {
      const node = random.below(graph.index.length);
      if (!mayTake(node)) continue;
      let liking = suits(node, 0) + (ease[node] as number) - hardnessOff(node, 0);
      if ((reach[node] as number) < goal.flips) liking -= DEAD_END;
      if (liking <= most) continue;
      most = liking;
      chosen = node;
    }
    return chosen;
  }

  /** What a node costs when a run should rise: how far it is from where the run should be by now. */
  function hardnessOff(node: number, place: number): number {
    if (hard === null || level) return 0;
    return RISE * offRise(hard[node] as number, place, goal.flips);
  }

  function step(from: number): number {
    const place = path.length;
    const left = goal.flips - place;
    kindDue = KIND_DUE * urgency(realLeft, left);
    focusDue = FOCUS_DUE * urgency(focusedLeft, left);
    const contrastDue = CONTRAST_DUE * Math.min(2, (3 * Math.max(0, turnsLeft)) / left);
    const pressing =
      unseen <= left + 2 && unseen >= left - 2 ? 5 : (2.5 * Math.min(unseen, left)) / left;
    for (let pile = 0; pile < piles; pile++) likingOf[pile] = random.fraction();
    if (lastPile >= 0) {
      (likingOf[lastPile] as number) -= inARow >= MOST_IN_A_ROW ? 99 : inARow > 1 ? 2 : 0.5;
    }
    let chosen = -1;
    let most = -Infinity;
    for (let edge = firstEdge[from] as number; edge < (firstEdge[from + 1] as number); edge++) {
      const node = leadsTo[edge] as number;
      if (!mayTake(node)) continue;
      const pile = turns[edge] as number;
      let liking = (likingOf[pile] as number) + random.fraction() * 1.5 + suits(node, place);
      if (!seenCards[cardAt[node * piles + pile] as number]) liking += pressing;
      liking += EASE * (ease[node] as number) - 2 * (reserve[node] as number);
      liking -= hardnessOff(node, place);
      const pair = contrast[edge] as number;
      if (pair >= 0) liking += contrasted[pair] ? contrastDue : NEW_CONTRAST;
      if (liking + MOST_AHEAD <= most) continue;
      if (left > 1) liking += waysOn(node, place + 1);
      if (liking <= most) continue;
      most = liking;
      chosen = edge;
    }
    if (chosen < 0) return -1;
    return leadsTo[chosen] as number;
  }

  function noteTurn(node: number): void {
    const before = path.at(-1);
    if (before === undefined) return;
    const edge = edgeBetween(graph, before, node);
    const pile = turns[edge] as number;
    inARow = pile === lastPile ? inARow + 1 : 1;
    lastPile = pile;
    const pair = contrast[edge] as number;
    if (pair < 0) return;
    contrasted[pair] = 1;
    turnsLeft--;
  }

  /** Higher the better an edge suits what is due then. A dead end is taken only where every way is one. */
  function waysOn(from: number, place: number): number {
    let best = -DEAD_END;
    for (let edge = firstEdge[from] as number; edge < (firstEdge[from + 1] as number); edge++) {
      const node = leadsTo[edge] as number;
      if (!mayTake(node) || spelling[node] === spelling[from]) continue;
      const pair = contrast[edge] as number;
      if (pair >= 0 && (turnsLeft > 0 || !contrasted[pair])) return MOST_AHEAD;
      const kind = kinds[place] === isReal[node] ? 1 : 0;
      const focus = place >= focuses.length || focuses[place] === isFocused[node] ? 1 : 0;
      const due = dues[place] === 1 && isDue[node] ? 1 : 0;
      if (kind + focus + due > best) best = kind + focus + due;
      if (best === 2 + (dues[place] ?? 0) && graph.contrasts === 0) break;
    }
    return best;
  }
}

/** From 1, while both sorts are due, to 3 when all flips left are to be of one. */
function urgency(ofOneSort: number, left: number): number {
  const share = Math.min(1, Math.max(0, ofOneSort / left));
  return 1 + 2 * Math.abs(2 * share - 1) ** 3;
}

const STARTS = 12;
const KIND_DUE = 4;
const FOCUS_DUE = 3.5;
const DAY_DUE = 3.5;
const EASE = 1.5;
const RISE = 5;
const NEW_CONTRAST = 9;
const CONTRAST_DUE = 7;
const MOST_AHEAD = 3;
const DEAD_END = 999;
