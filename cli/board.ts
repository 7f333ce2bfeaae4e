import { easyToHard } from '../core/boards/judge/nonsense.ts';
import { cardsAt, mayShow, outcomeAt, type WordTable } from '../core/boards/judge/word-table.ts';
import { flipOf } from '../core/boards/runs/run.ts';
import { AIMS, type Aim, aimWishes } from '../core/boards/search/aims.ts';
import { type FoundBoard, withWanted } from '../core/boards/search/best-board.ts';
import type { BoardWishes } from '../core/boards/search/board-wishes.ts';
import { type FoundAmong, findBoard, pilesToSearch } from '../core/boards/search/find-board.ts';
import { makeModel } from '../core/boards/search/make-model.ts';
import type { Flip } from '../core/boards/shapes/board.ts';
import { SHAPES, shapeById } from '../core/boards/shapes/shape-list.ts';
import type { Shape } from '../core/boards/shapes/shapes.ts';
import { cardsTaught } from '../core/boards/shapes/taught-cards.ts';
import { type CardId, graphemeOf } from '../core/language/card-id.ts';
import { cardsOnCard } from '../core/language/syllable-card.ts';
import type { Taught } from '../core/language/taught.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { type Here, loadHere, readCard, readNewest, readTaught } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions, type Typed } from './options.ts';

const MOST_CARDS = 99;
/** Syllables to a pile where the number is not typed: a pair of them is seldom a word. */
const MANY_SYLLABLES = 12;
/** Of four and more piles so many subproblems are looked at before the best board so far is given with its bound. */
const NODE_LIMIT = 60_000;

/** What a board is to be made of, for every command that finds one. */
export const BOARD_WISHES = {
  taught: 'text',
  shape: 'text',
  begin: 'text',
  middle: 'text',
  end: 'text',
  pin: 'text',
  ban: 'text',
  focus: 'text',
  aim: 'text',
  broken: 'text',
  accent: 'text',
} as const;

/** What can be asked of a board. */
export const BOARD_OPTIONS = { ...BOARD_WISHES, clean: 'flag', strict: 'flag' } as const;

/** `board --taught T --shape S`: the best board, with proof or bound. */
export function board(args: readonly string[]): string {
  const typed = readOptions(args, { ...BOARD_OPTIONS, model: 'flag' });
  if (typed.words.length > 0) fail(`board takes options only; “${typed.words[0]}” is none.`);
  const here = loadHere(typed);
  const taught = readTaught(typed.text('taught'), here);
  const shape = readShape(typed.text('shape') ?? 'syllable');
  const wishes = readWishes(typed, shape);
  const { found, lexicon } = searchFor(taught, shape, wishes, here);
  if (!typed.flag('json')) return boardText(found);
  return JSON.stringify({
    ...boardJson(found, wishes, lexicon),
    ...(typed.flag('model') ? { model: modelJson(found.among, wishes, shape) } : {}),
  });
}

/** A board, and the word list that judged it. */
export interface Searched {
  readonly found: FoundAmong;
  readonly lexicon: Lexicon;
}

/** The best board of what was taught. Ends the command when there is none. */
export function searchFor(
  taught: Taught,
  shape: Shape,
  wishes: BoardWishes,
  { lexicon, screen }: Here,
): Searched {
  const context = { taught, lexicon, screen };
  const cards = cardsTaught(taught);
  const search = pilesToSearch(shape, cards, wishes, context);
  if (search.kind !== 'piles') return fail(search.message);
  for (const id of [...(wishes.pinned ?? []), ...(wishes.focus ?? [])]) {
    if (
      !search.piles.some((pile) => pile.some((own) => own === id || cardsOnCard(own).includes(id)))
    ) {
      fail(`“${id}” was not taught, is banned or has no place in the shape “${shape.id}”.`);
    }
  }
  const found = findBoard(shape, cards, wishes, context);
  return found.kind === 'found' ? { found, lexicon } : fail(found.message);
}

/** The shape of an id. Ends the command when there is none. */
export function readShape(text: string): Shape {
  const shape = shapeById.get(text);
  const known = SHAPES.map(({ id }) => id).join(', ');
  return shape ?? fail(`There is no shape “${text}”. Shapes are ${known}.`);
}

/** Card ids from a list such as `sh,ea=EH`; none when it was not typed. */
export function readCards(text: string | null): readonly CardId[] {
  return (text ?? '')
    .split(',')
    .filter((part) => part.trim() !== '')
    .map(readCard);
}

/** What a board or drill is to be best for; `today` when it was not typed. */
export function readAim(typed: Typed): Aim {
  const text = typed.text('aim') ?? 'today';
  return (
    AIMS.find((aim) => aim === text) ??
    fail(`--aim takes ${AIMS.join(', ')}; “${text}” is none of them.`)
  );
}

/** The wishes of every option in `BOARD_OPTIONS` but `--shape`. */
export function readWishes(typed: Typed, { piles, form }: Shape): BoardWishes {
  const usual = form === 'beats' ? MANY_SYLLABLES : 8;
  const begin = typed.whole('begin', usual, 1, MOST_CARDS);
  const end = typed.whole('end', usual, 1, MOST_CARDS);
  const middle = typed.whole('middle', Number.MAX_SAFE_INTEGER, 1, Number.MAX_SAFE_INTEGER);
  const limitOf = {
    beginning: begin,
    vowel: middle,
    ending: end,
    bridge: end,
    suffix: MOST_CARDS,
    syllable: end,
  };
  const strict = typed.flag('strict');
  const focus = readCards(typed.text('focus'));
  const newest = readNewest(typed.text('taught'));
  const broken = readCards(typed.text('broken'));
  return {
    ...aimWishes(readAim(typed), { newest, broken, focus }),
    limits: piles.map(({ role }, pile) =>
      role === 'syllable' && pile === 0 ? begin : limitOf[role],
    ),
    pinned: readCards(typed.text('pin')),
    banned: readCards(typed.text('ban')),
    focus,
    clean: strict || typed.flag('clean'),
    strict,
    ...(piles.length > 3 || form === 'beats' ? { nodeLimit: NODE_LIMIT } : {}),
  };
}

function boardJson(
  { board, table, value, bound, optimal, counts }: FoundBoard,
  wishes: BoardWishes,
  lexicon: Lexicon,
) {
  const real: string[] = [];
  const nonsense: Flip[] = [];
  const illegal: string[] = [];
  table.words.forEach((word, at) => {
    const outcome = outcomeAt(table, at);
    if (outcome === 'familiar' || outcome === 'rare') real.push(word);
    else if (outcome === 'nonsense') nonsense.push(flipOf(table, at));
    else if (outcome !== 'screened' && outcome !== 'untaught') illegal.push(word);
  });
  const lying = new Set<string>(board.piles.flat());
  const shows = (wishes.wanted ?? [])
    .filter((id) => lying.has(id))
    .map((id) => ({
      id,
      words: table.words.filter((_, at) => mayShow(table, at) && cardsAt(table, at).includes(id))
        .length,
    }));
  return {
    shape: board.shape,
    clean: wishes.clean === true,
    value,
    bound,
    optimal,
    piles: board.piles,
    shows,
    words: { real, nonsense: easyToHard(nonsense, lexicon).map(({ word }) => word) },
    illegal,
    stopped: counts.screened + counts.untaught,
  };
}

/** The instance as it was solved: every card and combination that the best board was chosen from. */
function modelJson(whole: WordTable, asked: BoardWishes, shape: Shape) {
  const wishes = withWanted(whole, asked);
  const model = makeModel(whole, wishes);
  const weights: { cards: readonly string[]; weight: number }[] = [];
  const forbidden: (readonly string[])[] = [];
  whole.words.forEach((_, at) => {
    if (model.forbidden[at]) forbidden.push(cardsAt(whole, at));
    if (model.weights[at]) weights.push({ cards: cardsAt(whole, at), weight: model.weights[at] });
  });
  const limitOf = (role: string): number => {
    const pile = shape.piles.findIndex((spec) => spec.role === role);
    return wishes.limits[pile] ?? 0;
  };
  const middle = limitOf('vowel');
  const bridge = shape.piles.some(({ role }) => role === 'bridge');
  return {
    cards: whole.piles,
    weights,
    forbidden,
    limits: {
      begin: limitOf('beginning'),
      ...(middle === Number.MAX_SAFE_INTEGER ? {} : { middle }),
      end: limitOf(bridge ? 'bridge' : 'ending') || MOST_CARDS,
    },
    pinned: wishes.pinned ?? [],
  };
}

function boardText({ board, table, value, bound, optimal, counts }: FoundBoard): string {
  const shown = table.words.filter((_, at) => mayShow(table, at));
  return [
    ...board.piles.map((pile) => `pile  ${pile.map(graphemeOf).join(' ')}`),
    `${counts.familiar + counts.rare} real words, ${counts.nonsense} nonsense, ${counts.screened} stopped`,
    optimal
      ? `No board is worth more than this one: ${value}.`
      : `Worth ${value}; none is worth more than ${bound}.`,
    '',
    shown.join(' '),
  ].join('\n');
}
