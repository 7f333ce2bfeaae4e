/**
 * A run: flips over a board, one card changing at a time.
 *
 * Problem: a path in the graph whose nodes are the words that may be shown and
 * whose edges join words that differ in one card; no spelling twice, a given
 * number of real words, every card of the board seen if the flips allow it, and
 * no order that could be foreseen. Paths of this kind are NP-hard in general
 * and easy on boards, which are dense.
 *
 * Method: a plan of real and nonsense in random order, then a walk that at each
 * flip takes the best of all one-card changes by a score: fits the plan, shows
 * a card not seen yet (the more pressing the fewer flips are left), leaves a way
 * on, changes another pile than last time, and chance. A walk that falls short
 * is taken again, up to a fixed number of times; the best is kept. Uncommon
 * words are left out at first and let in only when a run cannot be had without.
 * A walk costs flips × cards × cards of the board at worst, and seldom that.
 *
 * Alternative: exact search with backtracking is no better where a run exists
 * and does not end where none does.
 */
import { correspondenceById } from '../language/correspondences.ts';
import { makeRandom, type Random, shuffled } from '../random.ts';
import type { Flip } from './board.ts';
import { mostPoints, pointsOf, type RunCounts, type RunGoal, type RunScore } from './run-score.ts';
import { cardsAt, mayShow, outcomeAt, type WordTable } from './word-table.ts';

/** What a run should be. */
export interface RunWishes {
  readonly flips: number;
  /** Share of real words, 0 to 1; their number is rounded to the nearest. */
  readonly realShare: number;
  readonly seed: number;
  /** Spellings to be left out where the board allows it: those of the last days. */
  readonly avoid?: ReadonlySet<string>;
  /** Cards that are easily taken for each other, to be turned one into the other: b and d. */
  readonly contrasts?: readonly (readonly [string, string])[];
  /** Short words and words with many real neighbours first. */
  readonly rise?: boolean;
}

/** A run and what it could not keep of the wishes; all three are 0 for a run as wished. */
export interface BuiltRun {
  readonly flips: readonly Flip[];
  readonly missing: {
    readonly flips: number;
    /** Real words too many (above 0) or too few (below 0). */
    readonly real: number;
    /** Cards of the board that no flip shows. */
    readonly cards: number;
  };
  readonly score: RunScore;
}

const WALKS = 60;

/** Builds a run from a judged board. The same table and wishes give the same run. */
export function makeRun(table: WordTable, wishes: RunWishes): BuiltRun {
  const random = makeRandom(wishes.seed);
  const graph = makeGraph(table, wishes);
  const target = makeTarget(graph, wishes);
  let best: Walk = { path: [], real: 0, seen: 0 };
  let bestScore = -Infinity;
  for (let walk = 0; walk < WALKS && bestScore < 0; walk++) {
    const found = takeWalk(graph, target, random, walk < WALKS / 2);
    const score = scoreOf(found, target);
    if (score > bestScore) {
      best = found;
      bestScore = score;
    }
  }
  const byChance = takeWalk(graph, target, makeRandom(wishes.seed), false, true);
  const floor = pointsOf(countsOf(graph, byChance), target);
  if (pointsOf(countsOf(graph, best), target) < floor) best = byChance;
  return {
    flips: best.path.map((index) => flipOf(table, index)),
    missing: {
      flips: wishes.flips - best.path.length,
      real: best.real - Math.round(best.path.length * wishes.realShare),
      cards: graph.cards - best.seen,
    },
    score: {
      reached: pointsOf(countsOf(graph, best), target),
      floor,
      bound: mostPoints(target),
    },
  };
}

/** What the score counts of a walk. */
function countsOf({ piles, spare, rival }: Graph, { path, real, seen }: Walk): RunCounts {
  let turns = 0;
  let fresh = 0;
  let before = -1;
  const contrasts = new Set<number>();
  path.forEach((at, place) => {
    if (!spare[at]) fresh++;
    const last = path[place - 1];
    if (last === undefined) return;
    const turned = piles.findIndex((pile) => cardIn(pile, at) !== cardIn(pile, last));
    if (before >= 0 && turned !== before) turns++;
    before = turned;
    const from = cardIn(piles[turned] as Pile, last);
    const to = cardIn(piles[turned] as Pile, at);
    if (rival[from]?.includes(to)) contrasts.add(Math.min(from, to) * 1000 + Math.max(from, to));
  });
  return { flips: path.length, real, cards: seen, turns, fresh, contrasts: contrasts.size };
}

/** A flip of a combination that may be shown. */
export function flipOf(table: WordTable, index: number): Flip {
  const cards = cardsAt(table, index);
  return {
    cards,
    word: table.words[index] as string,
    sounds: cards.flatMap((id) => correspondenceById.get(id)?.phonemes ?? []),
    kind: outcomeAt(table, index) === 'nonsense' ? 'nonsense' : 'real',
  };
}

/** The board's combinations, by their index in the table, and how to go from one to the next. */
interface Graph {
  /** HIDDEN, or the kind of word that may be shown. */
  readonly kind: Uint8Array;
  /** Words to be used only if needed: uncommon ones, and those of the last days. */
  readonly spare: Uint8Array;
  /** Equal numbers are equal spellings. */
  readonly spelling: Int32Array;
  readonly spellings: number;
  /** Indices of the words that may be shown. */
  readonly shown: readonly number[];
  readonly piles: readonly Pile[];
  readonly cards: number;
  /** For each card the cards of its pile that it is to be contrasted with. */
  readonly rival: readonly (readonly number[])[];
  /** How hard each word is, 0 to 255; all 0 when no rise is wished. */
  readonly hard: Uint8Array;
  /** How many cards some word shows. */
  readonly cardsWithWords: number;
}

/** A pile: how many cards, how far apart in the index, and the number of its first card. */
interface Pile {
  readonly size: number;
  readonly stride: number;
  readonly first: number;
}

const HIDDEN = 0;
const NONSENSE = 1;
const REAL = 2;

type Target = RunGoal;

interface Walk {
  readonly path: readonly number[];
  readonly real: number;
  readonly seen: number;
}

function makeGraph(table: WordTable, { avoid, contrasts = [], rise }: RunWishes): Graph {
  const sizes = table.piles.map((pile) => pile.length);
  const piles = sizes.map((size, pile) => ({
    size,
    stride: sizes.slice(pile + 1).reduce((all, other) => all * other, 1),
    first: sizes.slice(0, pile).reduce((sum, other) => sum + other, 0),
  }));
  const count = table.outcomes.length;
  const kind = new Uint8Array(count);
  const spare = new Uint8Array(count);
  const spelling = new Int32Array(count);
  const numbers = new Map<string, number>();
  const shown: number[] = [];
  const cards = new Set<number>();
  for (let at = 0; at < count; at++) {
    if (!mayShow(table, at)) continue;
    const outcome = outcomeAt(table, at);
    const word = table.words[at] as string;
    const number = numbers.get(word) ?? numbers.size;
    numbers.set(word, number);
    shown.push(at);
    kind[at] = outcome === 'nonsense' ? NONSENSE : REAL;
    spare[at] = outcome === 'rare' || avoid?.has(word) ? 1 : 0;
    spelling[at] = number;
    for (const pile of piles) cards.add(cardIn(pile, at));
  }
  return {
    kind,
    spare,
    spelling,
    spellings: numbers.size,
    shown,
    piles,
    cards: sizes.reduce((sum, size) => sum + size, 0),
    cardsWithWords: cards.size,
    rival: rivalsOf(table, contrasts),
    hard: rise ? hardnessOf(table, kind, shown, piles) : new Uint8Array(count),
  };
}

/** By the number of each card the numbers of its rivals in the same pile. */
function rivalsOf(
  { piles }: WordTable,
  contrasts: readonly (readonly [string, string])[],
): readonly (readonly number[])[] {
  let first = 0;
  return piles.flatMap((pile) => {
    const from = first;
    first += pile.length;
    return pile.map((id) =>
      contrasts.flatMap((pair) => {
        if (!pair.includes(id)) return [];
        const other = pile.indexOf(pair[0] === id ? pair[1] : pair[0]);
        return other < 0 ? [] : [from + other];
      }),
    );
  });
}

/**
 * How hard words are, by rank from 0 to 255: fewer sounds first; among equals
 * real words before nonsense, and words with many real ones a card away first.
 */
function hardnessOf(
  table: WordTable,
  kind: Uint8Array,
  shown: readonly number[],
  piles: readonly Pile[],
): Uint8Array {
  const raw = new Float64Array(kind.length);
  for (const at of shown) {
    let near = 0;
    for (const { size, stride } of piles) {
      const own = Math.floor(at / stride) % size;
      for (let card = 0; card < size; card++) {
        if (kind[at + (card - own) * stride] === REAL) near++;
      }
    }
    const length = cardsAt(table, at).reduce(
      (sum, id) => sum + (correspondenceById.get(id)?.phonemes.length ?? 0),
      0,
    );
    raw[at] = length * 100 + (kind[at] === NONSENSE ? 50 : 0) - Math.min(near, 40);
  }
  const ranks = new Uint8Array(kind.length);
  [...shown]
    .sort((one, other) => (raw[one] as number) - (raw[other] as number))
    .forEach((at, rank) => {
      ranks[at] = Math.floor((255 * rank) / shown.length);
    });
  return ranks;
}

/** The number of the card of a pile that a combination shows; unique over the board. */
function cardIn({ size, stride, first }: Pile, at: number): number {
  return first + (Math.floor(at / stride) % size);
}

/** How long a run can be and how many real words it can have: first the length, then the share. */
function makeTarget(graph: Graph, { flips, realShare }: RunWishes): Target {
  const real = new Set<number>();
  const nonsense = new Set<number>();
  for (const at of graph.shown) {
    (graph.kind[at] === REAL ? real : nonsense).add(graph.spelling[at] as number);
  }
  const length = Math.min(flips, graph.spellings);
  const wanted = Math.round(length * realShare);
  return {
    flips: length,
    real: Math.min(Math.max(wanted, length - nonsense.size), real.size),
    cards: Math.min(graph.cardsWithWords, length + graph.piles.length - 1),
    contrasts: Math.min(
      Math.max(0, length - 1),
      graph.rival.reduce((sum, rivals) => sum + rivals.length, 0) / 2,
    ),
  };
}

/** 0 for a run as wished; shorter runs are worst, then a wrong share, then cards not seen. */
function scoreOf({ path, real, seen }: Walk, target: Target): number {
  return -(
    (target.flips - path.length) * 10_000 +
    Math.abs(target.real - real) * 100 +
    Math.max(0, target.cards - seen)
  );
}

function takeWalk(
  graph: Graph,
  target: Target,
  random: Random,
  sparing: boolean,
  blind = false,
): Walk {
  const { kind, spare, spelling, piles, shown, rival, hard } = graph;
  const rivals = target.contrasts > 0;
  const rising = hard.some((rank) => rank > 0);
  const contrasted = new Set<number>();
  const plan = makePlan(target, random);
  const used = new Uint8Array(graph.spellings);
  const seenCards = new Uint8Array(graph.cards);
  const path: number[] = [];
  let seen = 0;
  let real = 0;
  let lastPile = -1;
  let pileBefore = -1;

  for (let at = start(); at >= 0; at = step(at)) {
    take(at);
    if (path.length === target.flips) break;
  }
  return { path, real, seen };

  function take(chosen: number): void {
    path.push(chosen);
    used[spelling[chosen] as number] = 1;
    if (kind[chosen] === REAL) real++;
    for (const pile of piles) {
      const card = cardIn(pile, chosen);
      if (seenCards[card]) continue;
      seenCards[card] = 1;
      seen++;
    }
  }

  /** Whether the next flip could turn a card into a rival that it was not turned into yet. */
  function contrastAhead(at: number): boolean {
    return piles.some((pile) => {
      const card = cardIn(pile, at);
      return rival[card]?.some((other) => {
        const next = at + (other - card) * pile.stride;
        if (kind[next] === HIDDEN || used[spelling[next] as number]) return false;
        return !contrasted.has(card) || !contrasted.has(other);
      });
    });
  }

  function noteContrast(from: number, to: number, pile: Pile): void {
    const [left, right] = [cardIn(pile, from), cardIn(pile, to)];
    if (rival[left]?.includes(right)) contrasted.add(left).add(right);
  }

  function start(): number {
    let chosen = -1;
    for (let tries = 0; tries < 12 && shown.length > 0; tries++) {
      const candidate = shown[random.below(shown.length)] as number;
      if (sparing && spare[candidate]) continue;
      chosen = candidate;
      if (kind[candidate] === plan[0]) break;
    }
    return chosen >= 0 || sparing ? chosen : (shown.at(-1) ?? -1);
  }

  function step(from: number): number {
    const left = target.flips - path.length;
    const unseen = target.cards - seen;
    const planned = plan[path.length] as number;
    const wantedHardness = rising ? (255 * path.length) / target.flips : 0;
    const pressing = left - unseen <= 2 ? 8 : (2.5 * unseen) / left;
    let chosen = -1;
    let chosenPile = -1;
    let most = -Infinity;
    for (let pile = 0; pile < piles.length; pile++) {
      const { size, stride, first } = piles[pile] as Pile;
      const own = Math.floor(from / stride) % size;
      let base = random.fraction();
      if (pile === lastPile) base -= pile === pileBefore ? 2 : 0.5;
      for (let card = 0; card < size; card++) {
        const candidate = from + (card - own) * stride;
        if (card === own || kind[candidate] === HIDDEN || used[spelling[candidate] as number]) {
          continue;
        }
        if (spare[candidate] && sparing) continue;
        let score = base + random.fraction() * 1.5;
        if (blind) {
          if (score <= most) continue;
          most = score;
          chosen = candidate;
          chosenPile = pile;
          continue;
        }
        if (rivals && rival[first + own]?.includes(first + card)) {
          if (!contrasted.has(first + own) || !contrasted.has(first + card)) score += 9;
        } else if (rivals && contrastAhead(candidate)) score += 3;
        score -= Math.abs((hard[candidate] as number) - wantedHardness) / 50;
        if (kind[candidate] === planned) score += 4;
        if (!seenCards[first + card]) score += pressing;
        if (spare[candidate]) score -= 1;
        if (score <= most || (left > 1 && !hasWayOn(candidate))) continue;
        most = score;
        chosen = candidate;
        chosenPile = pile;
      }
    }
    if (chosen >= 0) {
      if (rivals) noteContrast(from, chosen, piles[chosenPile] as Pile);
      pileBefore = lastPile;
      lastPile = chosenPile;
      if (kind[chosen] !== planned) swapPlan(plan, path.length);
    }
    return chosen;
  }

  /** Whether some one-card change leads on to a spelling that was not used, nor is this one's. */
  function hasWayOn(from: number): boolean {
    for (const { size, stride } of piles) {
      const own = Math.floor(from / stride) % size;
      for (let card = 0; card < size; card++) {
        const other = from + (card - own) * stride;
        if (kind[other] === HIDDEN || spelling[other] === spelling[from]) continue;
        if (!used[spelling[other] as number] && !(sparing && spare[other])) return true;
      }
    }
    return false;
  }
}

function makePlan(target: Target, random: Random): number[] {
  return shuffled(
    Array.from({ length: target.flips }, (_, at) => (at < target.real ? REAL : NONSENSE)),
    random,
  );
}

/** The other kind was taken now: its turn later becomes this one's. */
function swapPlan(plan: number[], at: number): void {
  const later = plan.findIndex((kind, place) => place > at && kind !== plan[at]);
  if (later < 0) return;
  [plan[at], plan[later]] = [plan[later] as number, plan[at] as number];
}
