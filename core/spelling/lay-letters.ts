/**
 * Lays the letters of an attempt on the cards of the word said: the cheapest path through cards ×
 * letters, by dynamic programming. A step takes letters as a card, leaves a card out, takes letters as
 * added, exchanges the letters of two neighbours, or takes one grapheme as two cards (x for ck and s). A
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
  const costs = new Float64Array(size).fill(Infinity);
  const steps = new Array<Step | undefined>(size);
  costs[0] = 0;
  const isBetter = (to: number, cost: number): boolean =>
    cost <= bound && cost < (costs[to] as number);
  const take = (from: number, to: number, cost: number, laid: readonly Laid[]): void => {
    costs[to] = cost;
    steps[to] = { from, laid };
  };
  for (let at = 0; at < goal; at++) {
    const cost = costs[at] as number;
    if (cost === Infinity) continue;
    const card = Math.floor(at / width);
    const letter = Math.floor((at % width) / LAYERS);
    const open = at % LAYERS;
    const place = (cards: number, letters: number, layer: number): number =>
      (card + cards) * width + (letter + letters) * LAYERS + layer;
    const takeAs = (
      to: number,
      more: number,
      letters: string,
      explained: Explained | null,
    ): void => {
      if (isBetter(to, cost + more)) {
        take(at, to, cost + more, [{ card, letters, explained, added: false }]);
      }
    };
    const next = attempt[letter];
    if (open >= 2 && next === 'e' && isBetter(place(0, 1, 0), cost)) {
      take(at, place(0, 1, 0), cost, []);
    }
    if (next !== undefined) {
      const adding = cost + costOfAdding(attempt, letter, card, targets.length);
      if (isBetter(place(0, 1, open), adding)) {
        const laid = { card, letters: next, explained: null, added: true };
        take(at, place(0, 1, open), adding, [laid]);
      }
    }
    const target = targets[card];
    if (!target || open === 3) continue;
    const after = open === 0 ? 0 : open + 1;
    const isSilent = target.phonemes.length === 0;
    takeAs(place(1, 0, after), isSilent ? COSTS.leftOutSilent : COSTS.leftOut, '', null);
    const here = written[letter];
    if (!here) continue;
    for (const one of here) {
      if (one.split && (open > 0 || !target.isVowel)) continue;
      const explained = explain(target, one);
      if (!explained) continue;
      takeAs(
        place(1, one.to - letter, one.split ? 1 : after),
        explained.cost,
        one.letters,
        explained,
      );
    }
    const longest = Math.min(target.longest, attempt.length - letter);
    for (let length = 2; length <= longest; length++) {
      const letters = attempt.slice(letter, letter + length);
      const explained = explainLetters(target, letters);
      if (explained) takeAs(place(1, length, after), explained.cost, letters, explained);
    }
    const other = targets[card + 1];
    if (!other || open > 0) continue;
    for (const pair of explainPair(target, other, attempt, letter, here)) {
      const to = place(2, pair.length, 0);
      if (!isBetter(to, cost + pair.cost)) continue;
      take(at, to, cost + pair.cost, [
        { card, letters: pair.letters[0], explained: pair.explained[0], added: false },
        { card: card + 1, letters: pair.letters[1], explained: pair.explained[1], added: false },
      ]);
    }
  }
  if (!steps[goal]) return null;
  const path: (readonly Laid[])[] = [];
  for (let at = goal; at > 0; ) {
    const step = steps[at] as Step;
    path.push(step.laid);
    at = step.from;
  }
  return { laid: path.reverse().flat(), cost: costs[goal] as number };
}

function costOfAdding(attempt: string, letter: number, card: number, cards: number): number {
  const isAgain = letter > 0 && attempt[letter] === attempt[letter - 1];
  if (isAgain && !isGrapheme(attempt.slice(letter - 1, letter + 1))) return COSTS.addedAgain;
  const last = letter === attempt.length - 1 && card === cards && card > 0;
  return last && attempt[letter] === 'e' ? COSTS.addedFinalE : COSTS.added;
}
