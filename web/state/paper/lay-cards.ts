import { makeWordTable } from '../../../core/boards/judge/word-table.ts';
import { searchTable } from '../../../core/boards/search/best-board.ts';
import type { Board } from '../../../core/boards/shapes/board.ts';
import { shapeById } from '../../../core/boards/shapes/shape-list.ts';
import { cardsMet } from '../../../core/boards/shapes/taught-cards.ts';
import {
  type CardId,
  graphemeOf,
  isSightId,
  lettersShown,
  makeSightId,
} from '../../../core/language/card-id.ts';
import { cardOfItem, itemOfCard } from '../../../core/sequence/item.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';
import { screenText } from '../../../core/words/own-text.ts';
import { sightParts } from '../../../core/words/sight-parts.ts';
import { wordsOfCards } from '../../../core/words/words-of-cards.ts';
import { cardPages } from '../../../print/cards/card-pages.ts';
import { charactersThatFit, type OwnPlace } from '../../../print/cards/own-length.ts';
import {
  ownCard,
  paperCard,
  sightCard,
  type Told,
  toldCard,
} from '../../../print/cards/paper-card.ts';
import { readFrom } from '../../../print/cards/read-from.ts';
import { stripPages } from '../../../print/cards/strip-pages.ts';
import { withoutTwins } from '../../../print/cards/twins.ts';
import { said } from '../../../print/sheets/said.ts';
import type { Typeface } from '../../../print/typeface.ts';
import { type LaidPaper, laidPages, nothingLaid } from './laid.ts';
import type { Look } from './look.ts';
import type { Choices } from './print-choices.ts';
import type { CardThing } from './print-things.ts';
import type { Stock } from './stock.ts';

/** What cards are made of. */
type CardStock = Pick<Stock, 'progress' | 'taught' | 'newest' | 'today' | 'table' | 'sources'>;

/** Cards or binder strips, as she chose them. */
export function layCards(
  kind: CardThing,
  choices: Choices,
  stock: CardStock,
  look: Look,
): LaidPaper {
  const { paper, rings } = choices;
  const backs = choices.backs ? choices.turn : null;
  if (kind === 'strips') {
    const board = choices.source === 'table' ? stock.table : stock.today;
    if (!board) return nothingLaid(NO_BOARD);
    const { piles, notes } = pilesForPaper(board, stock);
    const told = choices.backs ? toldOf(piles.flat(), stock, look) : null;
    const strips = piles.map((pile) =>
      pile.map((id) => (told ? toldCard(id, told) : paperCard(id))),
    );
    if (strips.some((pile) => pile.length === 0)) {
      return nothingLaid('This board has an empty pile. Put cards on it first.');
    }
    const pages = stripPages(strips, { paper, rings, backs }, look);
    return laidPages(pages, strips.flat().length, notes);
  }
  const place = { kind, paper, pictured: look.pictures !== null };
  const { texts, notes } = ownTexts(choices.own, place, look.typeface, stock.sources);
  const { lexicon } = stock.sources;
  const ids = idsOf(choices, stock);
  const onBack = choices.backs ? toldOf(ids, stock, look) : null;
  const named = ids.map((id) => {
    if (isSightId(id)) return sightCard(id, sightParts(graphemeOf(id), stock.taught, lexicon));
    return onBack ? toldCard(id, onBack) : paperCard(id);
  });
  const told = choices.pictures || choices.backs;
  const cards = [
    ...(told ? named : withoutTwins(named)),
    ...texts.map(ownCard),
    ...Array.from({ length: choices.blank }, () => ownCard('')),
  ];
  const made = laidPages(cardPages(cards, { kind, paper, backs }, look), cards.length, notes);
  if (kind === 'desk' || cards.length === 0) return made;
  return { ...made, readFrom: readFrom(cards, place, look.typeface) };
}

/** What the backs of cards tell of her class: sounds as she writes them, words of what was taught, steps. */
function toldOf(
  ids: readonly CardId[],
  { progress, taught, sources }: Pick<CardStock, 'progress' | 'taught' | 'sources'>,
  look: Look,
): Told {
  const words = wordsOfCards(ids, 2, { ...sources, taught });
  return {
    said: (sounds, grapheme) => said(sounds, look, grapheme),
    words: (id) => words.get(id) ?? [],
    step: (id) => stepOf(progress.sequence, itemOfCard(id)),
  };
}

const NO_BOARD = 'There is no board here yet.';

function idsOf(
  { source, from, to }: Choices,
  { progress, taught, newest, today, table }: CardStock,
): readonly CardId[] {
  const boardCards = (board: Board | null) => [...new Set(board?.piles.flat() ?? [])];
  switch (source) {
    case 'taught':
      return cardsMet(taught).map(({ id }) => id);
    case 'newest':
      return newest();
    case 'steps':
      return progress.sequence.steps
        .slice(from - 1, to)
        .flatMap(({ items }) => items.flatMap((item) => cardOfItem(item) ?? []));
    case 'sight':
      return [...taught.irregularWords].map(makeSightId);
    case 'today':
      return boardCards(today);
    case 'table':
      return boardCards(table);
    case 'own':
      return [];
  }
}

/**
 * The piles of a board as they may lie on paper, which cannot skip a combination: where one would be
 * stopped by the word screen, the fewest cards that the best board can do without are left out.
 */
function pilesForPaper(
  { shape: id, piles }: Board,
  { taught, sources }: Pick<Stock, 'taught' | 'sources'>,
): { readonly piles: readonly (readonly CardId[])[]; readonly notes: readonly string[] } {
  const shape = shapeById.get(id);
  if (!shape) return { piles: [], notes: [NO_BOARD] };
  const table = makeWordTable(shape, piles, { ...sources, taught });
  const limits = piles.map(({ length }) => length);
  const found = searchTable(table, { limits, clean: true, weights: EVERY_WORD, nodeLimit: 20_000 });
  if (found.kind !== 'found') return { piles: piles.map(() => []), notes: [found.message] };
  const kept = found.board.piles.map((pile, at) => {
    const held = new Set(pile);
    return piles[at]?.filter((card) => held.has(card)) ?? [];
  });
  const left = piles.flatMap((pile, at) => pile.filter((card) => !kept[at]?.includes(card)));
  if (left.length === 0) return { piles: kept, notes: [] };
  const names = left.map(lettersShown).join(', ');
  return {
    piles: kept,
    notes: [
      `Left out: ${names}. On paper no combination can be skipped, and these would make a word that is stopped, or none.`,
    ],
  };
}

/** All words that may be shown count alike, so that as few cards as can be are left out. */
const EVERY_WORD = { familiar: 1, rare: 1, nonsense: 1 };

/** Her own texts, one to a line; those that cannot be printed are named in `notes`. */
function ownTexts(
  text: string,
  place: OwnPlace,
  typeface: Typeface,
  { lexicon, screen }: Stock['sources'],
): { readonly texts: readonly string[]; readonly notes: readonly string[] } {
  const texts: string[] = [];
  const notes: string[] = [];
  for (const line of text.split('\n').map((each) => each.trim())) {
    if (line === '') continue;
    const [missing] = typeface.missing(line);
    const fitting = missing ? null : charactersThatFit(line, place, typeface);
    if (missing)
      notes.push(`“${line}” is not printed: the letters of the cards have no “${missing}”.`);
    else if (fitting !== null) {
      notes.push(
        `“${line}” is not printed: about ${fitting} characters fit at a size children can read. Shorten it${place.kind === 'half' ? '' : ', or choose half sheets'}.`,
      );
    } else if (screenText(line, lexicon, screen).verdict === 'stop') {
      notes.push(`“${line}” is not printed: the word screen stops it.`);
    } else texts.push(line);
  }
  return { texts, notes };
}
