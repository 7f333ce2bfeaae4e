import { judgeWord } from '../boards/judge/judge.ts';
import type { JudgeContext } from '../boards/judge/judge-context.ts';
import type { Flip } from '../boards/shapes/board.ts';
import { layWord } from '../boards/shapes/lay-word.ts';
import { shapeById } from '../boards/shapes/shape-list.ts';
import type { Shape } from '../boards/shapes/shapes.ts';
import { cardsTaught } from '../boards/shapes/taught-cards.ts';
import { graphemeShown, lettersShown } from '../language/card-id.ts';
import type { Correspondence } from '../language/correspondence.ts';
import { obstacles } from '../words/decodable.ts';
import type { Drill } from './drill.ts';

/** A word of her own as a flip of a run, or why it cannot be one, in a teacher's words. */
export type OwnFlip =
  | { readonly kind: 'laid'; readonly flip: Flip }
  | { readonly kind: 'refused'; readonly message: string };

/**
 * A word that she wants in the run, laid in the piles of the drill's board with taught cards, whichever
 * lie there today. It must be as fit for the class as any other word of a run: taught, by the rules where
 * it is nonsense, and cleared by the word screen.
 */
export function ownFlip(written: string, drill: Drill, context: JudgeContext): OwnFlip {
  const word = written.trim().toLowerCase();
  if (!/^[a-z]{1,20}$/.test(word)) return refuse('Write one word, in letters alone.');
  if (drill.run.some((flip) => flip.word === word)) {
    return refuse(`“${word}” is in the run already.`);
  }
  const shape = shapeById.get(drill.board.shape);
  if (!shape) return refuse('There is no board yet to lay it on.');
  const judged = rowsSpelling(word, shape, cardsTaught(context.taught)).map((cards) =>
    judgeWord(
      cards.map(({ id }) => id),
      context,
      shape,
    ),
  );
  const laid =
    judged.find(({ kind }) => kind === 'real') ?? judged.find(({ kind }) => kind === 'nonsense');
  if (laid && laid.kind !== 'stopped') {
    const { cards, sounds, kind } = laid;
    return { kind: 'laid', flip: { cards, sounds, word, kind } };
  }
  const [stopped] = judged;
  if (stopped?.kind === 'stopped') return refuse(stopped.reason.detail);
  return refuse(whyNot(word, context));
}

/**
 * The run with one more flip, where the fewest cards turn at once; of equal places the last. One card
 * alone turns where the run has room for it, else two or three.
 */
export function withFlip(run: readonly Flip[], flip: Flip): readonly Flip[] {
  const turns = (other: Flip | undefined): number =>
    other ? flip.cards.filter((id, pile) => id !== other.cards[pile]).length : 1;
  let best = run.length;
  for (let place = run.length - 1; place >= 0; place--) {
    if (cost(place) < cost(best)) best = place;
  }
  return run.toSpliced(best, 0, flip);

  function cost(place: number): number {
    return turns(run[place - 1]) + turns(run[place]);
  }
}

/** Every row of these cards that lies in the piles of a shape and spells a word. */
function rowsSpelling(
  word: string,
  shape: Shape,
  cards: readonly Correspondence[],
): readonly (readonly Correspondence[])[] {
  const piles = shape.piles.map((pile) => cards.filter(pile.takes));
  const rows: (readonly Correspondence[])[] = [];
  lay([], 0, false);
  return rows;

  /** Lays on from the letter `at`; `isOpen` while a split card waits for its silent e. */
  function lay(row: readonly Correspondence[], at: number, isOpen: boolean): void {
    const pile = piles[row.length];
    if (pile === undefined) {
      const isEnd = at === word.length || (isOpen && word.slice(at) === 'e');
      if (isEnd && layWord(shape, row)?.letters === word) rows.push(row);
      return;
    }
    for (const card of pile) {
      const [letters = '', silent] = card.grapheme.split('_');
      if (!word.startsWith(letters, at)) continue;
      lay([...row, card], at + letters.length, isOpen || silent !== undefined);
    }
  }
}

/** Why no taught cards spell it on this board. */
function whyNot(word: string, { taught, lexicon }: JudgeContext): string {
  const index = lexicon.indexOf(word);
  const byCards = { ...taught, irregularWords: new Set<string>() };
  const [first] = index < 0 ? [] : obstacles(index, lexicon, byCards);
  if (first?.kind === 'card')
    return `“${word}” asks for ${lettersShown(first.id)}, which was not taught yet.`;
  if (first?.kind === 'irregular') {
    return `“${word}” is not read by its cards: it is a word to know by sight, not one to blend.`;
  }
  if (first?.kind === 'habit') return `Words such as “${word}” were not taught yet.`;
  return `“${graphemeShown(word)}” does not lie on today’s board: its piles make words of another shape. Another board may hold it.`;
}

function refuse(message: string): OwnFlip {
  return { kind: 'refused', message };
}
