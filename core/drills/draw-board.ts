/**
 * Today's board. From all cards that fit, the newest are pinned and a random
 * handful of the others is drawn, so that no two days are alike; of these the
 * search takes the best. A clean board is preferred, one whose bad combinations
 * the screen must skip is the second choice.
 */

import { type FoundBoard, narrow, searchTable, type WordWeights } from '../boards/best-board.ts';
import type { Board } from '../boards/board.ts';
import { type BuiltRun, makeRun } from '../boards/run.ts';
import { shapeById } from '../boards/shape-list.ts';
import { candidates, type Shape, vowelPile } from '../boards/shapes.ts';
import { longerShapeFor } from '../boards/shapes-for.ts';
import { cardsTaught } from '../boards/taught-cards.ts';
import { cardsAt, makeWordTable, mayShow, type WordTable } from '../boards/word-table.ts';
import { wordsInShape } from '../boards/words-in-shape.ts';
import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { partsOf } from '../language/laid-syllable.ts';
import { makeRandom, type Random, shuffled } from '../random.ts';
import { commonnessIn } from './commonness.ts';
import { DRILL_DEFAULTS, type DrillEngine, type DrillSpec } from './drill-spec.ts';

/** A board and the run over it. */
export interface DrawnBoard {
  readonly board: Board;
  readonly run: BuiltRun;
  /** How many of the newest cards make words in this shape and are not on the board. */
  readonly leftOut: number;
}

/** How many more consonants are drawn than the pile will hold: what the search chooses from. */
const SPARE = 8;
/** The same for boards of more than three piles, whose combinations multiply. */
const MANY_SPARE = 2;
const TRIES = 4;
/** What it costs to leave the shape of the newest cards: less than one word off the set share. */
const SECOND_SHAPE = 5;

/** Draws the board and its run; null when no card can lie in some pile. */
export function drawBoard(spec: DrillSpec, engine: DrillEngine): DrawnBoard | null {
  const random = makeRandom(spec.seed + 1);
  let best: DrawnBoard | null = null;
  let least = Infinity;
  for (const [turn, shape] of shapesToTry(spec).entries()) {
    if (least < turn * SECOND_SHAPE) break;
    const chance = { random, ...liking(shape, spec, engine) };
    for (let attempt = 0; attempt < TRIES && least > 0; attempt++) {
      const drawn = drawOnce(shape, spec, engine, chance, attempt);
      const fault = drawn ? faults(drawn) + turn * SECOND_SHAPE : Infinity;
      if (fault < least) {
        least = fault;
        best = drawn;
      }
    }
  }
  return best;
}

/**
 * The shape asked for; else the one that takes most, or the one whose vowels
 * come last when the newest do. New vowels of both kinds take turns by the seed.
 */
function shapesToTry(spec: DrillSpec): readonly Shape[] {
  const { shape, newest = [] } = spec;
  const general = shapeById.get('syllable') as Shape;
  const open = shapeById.get('open') as Shape;
  const asked = shape === undefined ? undefined : shapeById.get(shape);
  if (asked) return [asked];
  const longer = longerShapeFor(spec.taught, newest);
  if (longer) return [longer, general];
  const fresh = newest.flatMap((id) => correspondenceById.get(id) ?? []);
  const isLast = (card: Correspondence): boolean => vowelPile(open).takes(card);
  const isInner = (card: Correspondence): boolean =>
    vowelPile(general).takes(card) && !(NARROW.has(card.id) && isLast(card));
  if (!fresh.some((card) => isLast(card) && !isInner(card))) return [general];
  const lastFirst = !fresh.some(isInner) || Math.abs(spec.seed) % 2 === 1;
  return lastFirst ? [open, general] : [general, open];
}

/** How far a board and its run are from what was wished; a new card left out weighs most. */
function faults({ run: { missing }, leftOut }: DrawnBoard): number {
  return missing.flips * 100 + leftOut * 30 + Math.abs(missing.real) * 10 + missing.cards;
}

function drawOnce(
  shape: Shape,
  spec: DrillSpec,
  engine: DrillEngine,
  chance: Chance,
  attempt: number,
): DrawnBoard | null {
  const flips = spec.flips ?? DRILL_DEFAULTS.flips;
  const realShare = spec.realShare ?? DRILL_DEFAULTS.realShare;
  const manyPiles = shape.piles.length > 3;
  const everything = attempt === TRIES - 1 && !manyPiles;
  const newest = new Set([...(spec.newest ?? []), ...(spec.focus ?? [])]);
  const mostVowels = manyPiles ? 3 : Math.min(6, Math.max(2, Math.round(flips / 5)));
  const fitting = candidates(shape, cardsFor(spec));
  const vowels = fitting.map((cards, at) =>
    shape.piles[at]?.role === 'vowel' ? drawVowels(cards, newest, mostVowels, chance) : [],
  );
  const sizes = pileSizes(
    flips,
    shape,
    vowels.map(({ length }) => length),
    everything,
  );
  const piles = fitting.map((cards, at) => {
    if (shape.piles[at]?.role === 'vowel') return (vowels[at] ?? []).map(({ id }) => id);
    const spare = manyPiles ? MANY_SPARE : SPARE;
    const many = everything ? Infinity : (sizes[at] as number) + spare;
    return drawPile(cards, newest, many, chance).map(({ id }) => id);
  });
  if (piles.some((pile) => pile.length === 0)) return null;
  if (shape.form === 'two') addWords(piles, sizes, shape, spec, engine, chance.random);

  const table = makeWordTable(shape, piles, { taught: spec.taught, ...engine });
  const pinned = pinnedThatWork(table, newest, sizes);
  const wishes = {
    limits: sizes,
    pinned,
    focus: [...newest],
    weights: weightsFor(realShare, manyPiles ? MANY_REAL : attempt),
    nodeLimit: 60,
  };
  const clean = attempt < 2 ? searchTable(table, { ...wishes, clean: true }) : null;
  const found = clean?.kind === 'found' ? clean : searchTable(table, wishes);
  if (found.kind !== 'found') return null;
  const board = withoutIdleCards(found);
  const run = makeRun(board.table, {
    flips,
    realShare,
    seed: chance.random.bits(),
    ...(spec.avoid ? { avoid: spec.avoid } : {}),
  });
  const shown = new Set(run.flips.flatMap(({ cards }) => cards.map((id, pile) => `${pile} ${id}`)));
  const lying = board.board.piles.map((pile, at) => pile.filter((id) => shown.has(`${at} ${id}`)));
  const leftOut = pinned.filter((id) => !lying.flat().includes(id)).length;
  return { board: { ...board.board, piles: lying }, run, leftOut };
}

/** The cards taught; -ing and -est, which are several, only in a shape that was asked for. */
function cardsFor({ taught, shape }: DrillSpec): readonly Correspondence[] {
  if (shape !== undefined) return cardsTaught(taught);
  return [...taught.correspondences].flatMap((id) => correspondenceById.get(id) ?? []);
}

/**
 * Two syllables seldom make a word by chance: the cards of some real words, drawn
 * at random, replace what was drawn, as far as the piles hold.
 */
function addWords(
  piles: string[][],
  sizes: readonly number[],
  shape: Shape,
  spec: DrillSpec,
  engine: DrillEngine,
  random: Random,
): void {
  const words = shuffled(wordsInShape(shape, spec.taught, engine.lexicon), random);
  const wanted = new Set([...(spec.newest ?? []), ...(spec.focus ?? [])]);
  words.sort(
    (a, b) => Number(b.some((id) => wanted.has(id))) - Number(a.some((id) => wanted.has(id))),
  );
  const laid = piles.map(() => new Set<string>());
  for (const ids of words) {
    const fits = ids.every(
      (id, at) => laid[at]?.has(id) || (laid[at]?.size ?? 0) < (sizes[at] as number),
    );
    if (!fits) continue;
    for (const [at, id] of ids.entries()) laid[at]?.add(id);
  }
  piles.forEach((pile, at) => {
    const all = new Set([...(laid[at] ?? []), ...pile]);
    piles[at] = [...all].slice(0, pile.length);
  });
}

/** Pile sizes that let every card be seen in so many flips, with some to spare. */
function pileSizes(
  flips: number,
  { piles }: Shape,
  vowels: readonly number[],
  wide: boolean,
): readonly number[] {
  const all = Math.max(7, Math.floor(flips * (wide ? 1 : 0.8)) + 1);
  const others = piles.filter(({ role }) => role !== 'vowel').length;
  const vowelsInAll = vowels.reduce((sum, count) => sum + count, 0);
  const side = Math.max(3, Math.floor((all - vowelsInAll) / others));
  const largest = others === 1 ? 28 : 12;
  return piles.map(({ role }, at) =>
    role === 'vowel' ? (vowels[at] as number) : Math.min(largest, side),
  );
}

/**
 * The newest cards of a pile, then others by chance, no grapheme twice. A card
 * of many common words is likelier to come (weighted sampling without
 * replacement by Efraimidis & Spirakis 2006: the largest of uʷ⁻¹).
 */
function drawPile(
  cards: readonly Correspondence[],
  newest: ReadonlySet<string>,
  most: number,
  { random, weight }: Chance,
): readonly Correspondence[] {
  const fresh = cards.filter(({ id }) => newest.has(id));
  const others = cards
    .filter(({ id }) => !newest.has(id) && !NARROW.has(id))
    .map((card) => ({ card, key: Math.log(random.fraction() + 1e-9) / weight(card) }))
    .sort((one, other) => other.key - one.key)
    .map(({ card }) => card);
  const graphemes = new Set<string>();
  const drawn: Correspondence[] = [];
  for (const card of [...fresh, ...others]) {
    if (graphemes.has(card.grapheme) || drawn.length >= most) continue;
    graphemes.add(card.grapheme);
    drawn.push(card);
  }
  return drawn;
}

/** The vowels: the newest, two short ones that every ending knows, and others by chance. */
function drawVowels(
  cards: readonly Correspondence[],
  newest: ReadonlySet<string>,
  most: number,
  chance: Chance,
): readonly Correspondence[] {
  const drawn = drawPile(cards, newest, most, chance);
  const short = drawn.filter(({ kind }) => kind === 'short-vowel').length;
  const spare = drawn.filter(({ id, kind }) => kind !== 'short-vowel' && !newest.has(id));
  const more = drawPile(
    cards.filter((card) => card.kind === 'short-vowel' && !drawn.includes(card)),
    new Set(),
    Math.min(Math.max(0, 2 - short), spare.length + most - drawn.length),
    chance,
  );
  const out = new Set(spare.slice(Math.max(0, spare.length + most - drawn.length - more.length)));
  return [...drawn.filter((card) => !out.has(card)), ...more];
}

interface Chance {
  readonly random: Random;
  /** How much more likely one card is to be drawn than another. */
  readonly weight: (card: Correspondence) => number;
}

/** Common cards are liked more, and cards that make words with the newest. */
function liking(shape: Shape, spec: DrillSpec, engine: DrillEngine): Pick<Chance, 'weight'> {
  if (shape.piles.length > 3) return likingInWords(shape, spec, engine);
  const commonness = commonnessIn(engine.lexicon);
  const partners = partnersOfNewest(shape, spec, engine);
  return {
    weight(card) {
      const common = Math.min(...partsOf(card).map(({ id }) => commonness(id)));
      const together = 1 + (partners.get(card.id) ?? 0);
      return Math.sqrt(((common + 1) * together) / card.phonemes.length);
    },
  };
}

/** Of many piles: cards that lie in real words of the shape, those with the newest above all. */
function likingInWords(shape: Shape, spec: DrillSpec, engine: DrillEngine): Pick<Chance, 'weight'> {
  const wanted = new Set([...(spec.newest ?? []), ...(spec.focus ?? [])]);
  const counts = new Map<string, number>();
  for (const ids of wordsInShape(shape, spec.taught, engine.lexicon)) {
    const worth = ids.some((id) => wanted.has(id)) ? 6 : 1;
    for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + worth);
  }
  return { weight: ({ id }) => (counts.get(id) ?? 0) + 0.1 };
}

/** For each card how many words it makes with the newest ones, looking at a few of these. */
function partnersOfNewest(
  shape: Shape,
  spec: DrillSpec,
  engine: DrillEngine,
): ReadonlyMap<string, number> {
  const piles = candidates(shape, cardsFor(spec)).map((pile) => pile.map(({ id }) => id));
  const counts = new Map<string, number>();
  for (const id of [...(spec.focus ?? []), ...(spec.newest ?? [])].slice(0, NEWEST_LOOKED_AT)) {
    piles.forEach((pile, at) => {
      if (!pile.includes(id)) return;
      const own = piles.map((others, other) => (other === at ? [id] : others));
      const table = makeWordTable(shape, own, { taught: spec.taught, ...engine });
      table.words.forEach((_, index) => {
        if (!mayShow(table, index)) return;
        for (const other of cardsAt(table, index)) counts.set(other, (counts.get(other) ?? 0) + 1);
      });
    });
  }
  return counts;
}

const NEWEST_LOOKED_AT = 3;

/** Cards that live on one or two neighbours only: drawn when they are new, not otherwise. */
const NARROW: ReadonlySet<string> = new Set([
  'a=AA',
  'a=AO',
  'al=AO',
  'al=AA',
  'ar=AO+R',
  'or=ER',
  'o=OW',
  'i=AY',
  'augh=AO',
  'ough=AO',
  'eigh=EY',
  'th=DH',
]);

/** The newest cards that make some word here, as many as their piles hold. */
function pinnedThatWork(
  table: WordTable,
  newest: ReadonlySet<string>,
  sizes: readonly number[],
): readonly string[] {
  const words = new Map<string, number>();
  table.words.forEach((_, index) => {
    if (!mayShow(table, index)) return;
    for (const id of cardsAt(table, index)) words.set(id, (words.get(id) ?? 0) + 1);
  });
  return table.piles.flatMap((pile, at) =>
    pile.filter((id) => newest.has(id) && words.has(id)).slice(0, sizes[at]),
  );
}

/** Of many piles real words are rare, and are what the board is chosen for. */
const MANY_REAL = 24;

/** What words weigh when so many of them are to be real; the real ones more at each new try. */
function weightsFor(realShare: number, attempt: number): WordWeights {
  if (realShare >= 0.9) return { familiar: 4, rare: 1, nonsense: 0 };
  if (realShare <= 0.1) return { familiar: 0, rare: 0, nonsense: 4 };
  return { familiar: 4 + 4 * attempt, rare: 1, nonsense: 1 };
}

/** The board without cards that make no word with the others that lie there. */
function withoutIdleCards({ board, table }: FoundBoard): {
  readonly board: Board;
  readonly table: WordTable;
} {
  const used = table.piles.map(() => new Set<string>());
  table.words.forEach((_, index) => {
    if (!mayShow(table, index)) return;
    cardsAt(table, index).forEach((id, pile) => {
      used[pile]?.add(id);
    });
  });
  const piles = table.piles.map((pile, at) => pile.filter((id) => used[at]?.has(id)));
  return { board: { ...board, piles }, table: narrow(table, piles) };
}
