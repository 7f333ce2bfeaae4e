/**
 * Lays the letters of an attempt on the cards of the word said: the cheapest path through cards ×
 * letters, by dynamic programming. A step takes letters as a card, leaves a card out, takes letters as
 * added, exchanges the letters of two neighbors, or takes one grapheme as two cards (x for ck and s). A
 * split a_e stays open until its e, over at most two cards; the third coordinate counts them. O(cards ×
 * letters); ways that cost more than a bound are not followed, and the bound is raised when none is left,
 * since most attempts are nearly right. Of paths that cost the same the first in a fixed order is taken,
 * so that the answer is always the same.
 *
 * Letters are laid on cards and not on single sounds, because a teacher asks of cards: the one that was
 * asked for is known, and what was written for it is what she wants to see.
 */
import { COSTS } from './costs.ts';
import { type Explained, explain, explainLetters } from './explain.ts';
import { explainPair } from './explain-pair.ts';
import type { Target } from './target.ts';
import { isGrapheme, type Written } from './voices.ts';

/** What was written for one card (null: left out), or letters added where `card` is the next one. */
export interface Laid {
  readonly card: number;
  readonly letters: string;
  readonly explained: Explained | null;
  readonly added: boolean;
}

/** The cheapest way to lay an attempt, in the order of its letters, and what it costs. */
export interface LaidLetters {
  readonly laid: readonly Laid[];
  readonly cost: number;
}

/** Lays `attempt` (a–z); `written` are its graphemes by place. */
export function layLetters(
  targets: readonly Target[],
  attempt: string,
  written: readonly (readonly Written[])[],
): LaidLetters {
  for (const bound of BOUNDS) {
    const found = layWithin(bound, targets, attempt, written);
    if (found) return found;
  }
  throw new Error(`“${attempt}” could not be laid: leaving out and adding is always a way.`);
}

const BOUNDS = [2, 5, Infinity] as const;

/** Split letters open: none, just begun, over one card, over two. */
const LAYERS = 4;

interface Step {
  readonly from: number;
  readonly laid: readonly Laid[];
}

/** The cheapest way found so far to each place of cards × letters × layers, none above `bound`. */
interface Grid {
  readonly bound: number;
  /** Places from one card to the next. */
  readonly width: number;
  readonly costs: Float64Array;
  readonly steps: (Step | undefined)[];
}

/** The cheapest way that costs no more than `bound`; null when there is none. */
function layWithin(
  bound: number,
  targets: readonly Target[],
  attempt: string,
  written: readonly (readonly Written[])[],
): LaidLetters | null {
  const width = (attempt.length + 1) * LAYERS;
  const size = (targets.length + 1) * width;
  const goal = size - LAYERS;
  const { costs, steps } = cleared(size);
  const grid: Grid = { bound, width, costs, steps };
  costs[0] = 0;
  for (let at = 0; at < goal; at++) {
    if (costs[at] === Infinity) continue;
    const card = Math.floor(at / width);
    const letter = Math.floor((at % width) / LAYERS);
    const open = at % LAYERS;
    const target = targets[card];
    if (letter < attempt.length) passLetter(grid, at, attempt, letter, card, targets.length);
    if (!target || open === 3) continue;
    takeCard(grid, at, target, attempt, letter, written[letter] ?? NOTHING);
    const other = targets[card + 1];
    if (!other || open > 0) continue;
    for (const pair of explainPair(target, other, attempt, letter, written[letter] ?? NOTHING)) {
      const to = at + 2 * width + pair.length * LAYERS;
      if (!isBetter(grid, at, to, pair.cost)) continue;
      take(grid, at, to, pair.cost, [
        { card, letters: pair.letters[0], explained: pair.explained[0], added: false },
        { card: card + 1, letters: pair.letters[1], explained: pair.explained[1], added: false },
      ]);
    }
  }
  if (costs[goal] === Infinity) return null;
  const path: (readonly Laid[])[] = [];
  for (let at = goal; at > 0; ) {
    const step = grid.steps[at] as Step;
    path.push(step.laid);
    at = step.from;
  }
  return { laid: path.reverse().flat(), cost: costs[goal] as number };
}

/** The grid's room, used again for every attempt: making it again took a third of the time. */
let room = { costs: new Float64Array(0), steps: [] as (Step | undefined)[] };

/** Room for so many places, no way known to any; what `steps` still holds is written before it is read. */
function cleared(size: number): typeof room {
  if (room.costs.length < size) {
    room = { costs: new Float64Array(size * 2), steps: new Array(size * 2) };
  }
  room.costs.fill(Infinity, 0, size);
  return room;
}

const NOTHING: readonly Written[] = [];

/** The next letter is the e of an open split, or belongs to no card. */
function passLetter(
  grid: Grid,
  at: number,
  attempt: string,
  letter: number,
  card: number,
  cards: number,
): void {
  const open = at % LAYERS;
  const closed = at - open + LAYERS;
  if (open >= 2 && attempt[letter] === 'e' && isBetter(grid, at, closed, 0)) {
    take(grid, at, closed, 0, []);
  }
  const cost = costOfAdding(attempt, letter, card, cards);
  if (isBetter(grid, at, at + LAYERS, cost)) {
    const laid = { card, letters: attempt[letter] as string, explained: null, added: true };
    take(grid, at, at + LAYERS, cost, [laid]);
  }
}

/** The next card is left out, or is what the next letters may be. */
function takeCard(
  grid: Grid,
  at: number,
  target: Target,
  attempt: string,
  letter: number,
  here: readonly Written[],
): void {
  const open = at % LAYERS;
  const next = at - open + grid.width;
  const after = next + (open === 0 ? 0 : open + 1);
  const isSilent = target.phonemes.length === 0;
  takeAs(grid, at, after, isSilent ? COSTS.leftOutSilent : COSTS.leftOut, '', null);
  if (here.length === 0) return;
  for (const one of here) {
    if (one.split && (open > 0 || !target.isVowel)) continue;
    const explained = explain(target, one);
    if (!explained) continue;
    const to = (one.split ? next + 1 : after) + (one.to - letter) * LAYERS;
    takeAs(grid, at, to, explained.cost, one.letters, explained);
  }
  const longest = Math.min(target.longest, attempt.length - letter);
  for (let length = 2; length <= longest; length++) {
    const letters = attempt.slice(letter, letter + length);
    const explained = explainLetters(target, letters);
    if (explained) takeAs(grid, at, after + length * LAYERS, explained.cost, letters, explained);
  }
}

function takeAs(
  grid: Grid,
  from: number,
  to: number,
  cost: number,
  letters: string,
  explained: Explained | null,
): void {
  if (!isBetter(grid, from, to, cost)) return;
  const card = Math.floor(from / grid.width);
  take(grid, from, to, cost, [{ card, letters, explained, added: false }]);
}

function isBetter({ bound, costs }: Grid, from: number, to: number, more: number): boolean {
  const cost = (costs[from] as number) + more;
  return cost <= bound && cost < (costs[to] as number);
}

function take(
  { costs, steps }: Grid,
  from: number,
  to: number,
  more: number,
  laid: readonly Laid[],
): void {
  costs[to] = (costs[from] as number) + more;
  steps[to] = { from, laid };
}

function costOfAdding(attempt: string, letter: number, card: number, cards: number): number {
  const isAgain = letter > 0 && attempt[letter] === attempt[letter - 1];
  if (isAgain && !isGrapheme(attempt.slice(letter - 1, letter + 1))) return COSTS.addedAgain;
  const last = letter === attempt.length - 1 && card === cards && card > 0;
  return last && attempt[letter] === 'e' ? COSTS.addedFinalE : COSTS.added;
}
