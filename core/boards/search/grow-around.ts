import { type BoardModel, boardValue } from './board-model.ts';
import { refine } from './refine-board.ts';

interface Grown {
  readonly piles: readonly (readonly number[])[];
  readonly value: number;
}

/**
 * Good boards of three piles to start from where many combinations are
 * forbidden and the vowel pile is as large as it likes: once
 * beginnings and endings are laid, a vowel can lie there exactly when nothing is
 * forbidden with them. So only these two piles grow, always by the card that
 * leaves the most, and each ending starts one board. A heuristic: nothing is proven. O(cards laid ×
 * candidates × combinations on the board) for each board.
 *
 * growBoards lays vowels one by one and commits to the first that bring most, so
 * it seldom finds boards with many plain vowels.
 */
export function growAround(model: BoardModel): readonly Grown[] {
  const [begin = [], , ends = []] = model.pinned;
  if (ends.length >= (model.limits[2] as number)) return [growFrom(model, begin, ends)];
  return Array.from({ length: model.sizes[2] as number }, (_, end) =>
    growFrom(model, begin, ends.includes(end) ? ends : [...ends, end]),
  );
}

function growFrom(
  model: BoardModel,
  pinnedBegin: readonly number[],
  pinnedEnd: readonly number[],
): Grown {
  const { sizes, limits } = model;
  let begin = pinnedBegin;
  let end = pinnedEnd;
  let best: Grown = { piles: model.pinned, value: 0 };
  for (;;) {
    let next: Grown | null = null;
    for (const pile of [0, 2] as const) {
      const lying = pile === 0 ? begin : end;
      if (lying.length >= (limits[pile] as number)) continue;
      for (let card = 0; card < (sizes[pile] as number); card++) {
        if (lying.includes(card)) continue;
        const more = [...lying, card];
        const laid = pile === 0 ? layVowels(model, more, end) : layVowels(model, begin, more);
        if (!next || laid.value > next.value) next = laid;
      }
    }
    if (!next || next.value < best.value) break;
    [begin = [], , end = []] = next.piles;
    best = next;
  }
  return boardValue(model, best.piles) > 0 ? refine(model, best.piles) : best;
}

/** The board of these beginnings and endings, and of every vowel that may lie with them. */
function layVowels(
  { sizes, weights, forbidden }: BoardModel,
  begin: readonly number[],
  end: readonly number[],
): Grown {
  const layers = sizes[1] as number;
  const columns = sizes[2] as number;
  const vowels: number[] = [];
  let value = 0;
  for (let v = 0; v < layers; v++) {
    const own = worthOf(v);
    if (own < 0) continue;
    vowels.push(v);
    value += own;
  }
  return { piles: [begin, vowels, end], value };

  function worthOf(v: number): number {
    let sum = 0;
    for (const b of begin) {
      const from = (b * layers + v) * columns;
      for (const e of end) {
        if (forbidden[from + e]) return -1;
        sum += weights[from + e] as number;
      }
    }
    return sum;
  }
}
