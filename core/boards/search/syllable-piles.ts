/**
 * Which syllables a board is searched among: those of the longer words that a group can read.
 *
 * Method: words are edges between syllables. The syllables of the most words worth the most are kept, the
 * others dropped from the longer pile first, and counted again, since a syllable whose partners went is
 * worth less. Some thousand syllables become some dozens, among which the search is exact.
 */
import { type CardId, graphemeOf } from '../../language/card-id.ts';
import { cardsOnCard } from '../../language/syllable-card.ts';
import type { JudgeContext } from '../judge/judge-context.ts';
import { belongsTo } from '../shapes/beat-shapes.ts';
import { type LongWord, longWords } from '../shapes/long-words.ts';
import type { Shape } from '../shapes/shapes.ts';
import type { BoardWishes } from './board-wishes.ts';

/** The most rows that are judged for one board of syllables. */
const MOST_ROWS = 6000;
/** The rarest band whose words count as familiar, and what they count. */
const FAMILIAR_BAND = 5;
const FAMILIAR = 4;

/** The syllables that may lie in each pile of a shape, those of most words first, `pinned` ones always. */
export function syllablePiles(
  shape: Shape,
  { pinned = [], banned = [], wanted = [], worth = [], focus = [] }: Partial<BoardWishes>,
  context: JudgeContext,
  mostRows = MOST_ROWS,
): readonly (readonly CardId[])[] {
  const { taught, lexicon, screen } = context;
  const out = new Set<string>(banned);
  const times = new Map<CardId, number>([
    ...focus.map((id) => [id, 3] as const),
    ...wanted.map((id) => [id, 3] as const),
    ...worth,
  ]);
  let words: readonly Weighed[] = longWords(taught, shape.piles.length, lexicon, screen)
    .filter((word) => belongsTo(shape, word, lexicon))
    .filter(({ syllables }) => !syllables.some((id) => out.has(id)))
    .map(({ syllables, index }) => ({
      syllables,
      worth:
        (lexicon.band(index) <= FAMILIAR_BAND ? FAMILIAR : 1) *
        Math.max(1, ...syllables.flatMap(cardsOnCard).map((id) => times.get(id) ?? 1)),
    }));
  words = alikeOnce(words, shape.piles.length, pinned);
  for (;;) {
    const piles = ranked(words, shape.piles.length, pinned);
    const rows = piles.reduce((product, pile) => product * pile.length, 1);
    if (rows <= mostRows) return piles;
    // A quarter of the longest pile at once, never below what fits.
    const longest = piles.reduce(
      (most, pile, at) => (pile.length > (piles[most]?.length ?? 0) ? at : most),
      0,
    );
    const size = (piles[longest] as readonly CardId[]).length;
    const fits = Math.floor((mostRows / rows) * size);
    const keep = new Set(piles[longest]?.slice(0, Math.max(1, fits, Math.floor(size * 0.75))));
    words = words.filter(({ syllables }) => keep.has(syllables[longest] as CardId));
  }
}

interface Weighed {
  readonly syllables: LongWord['syllables'];
  readonly worth: number;
}

/** Of syllables that are written alike and said otherwise (re-, twice) a pile keeps the one of most words. */
function alikeOnce(
  words: readonly Weighed[],
  piles: number,
  pinned: readonly CardId[],
): readonly Weighed[] {
  const kept = ranked(words, piles, pinned).map((pile) => {
    const byLetters = new Map<string, CardId>();
    for (const id of pile) if (!byLetters.has(graphemeOf(id))) byLetters.set(graphemeOf(id), id);
    return new Set(byLetters.values());
  });
  return words.filter(({ syllables }) => syllables.every((id, at) => kept[at]?.has(id)));
}

/** The syllables of each pile, those of the words worth most first; pinned ones foremost. */
function ranked(
  words: readonly Weighed[],
  piles: number,
  pinned: readonly CardId[],
): readonly (readonly CardId[])[] {
  return Array.from({ length: piles }, (_, at) => {
    const worth = new Map<CardId, number>();
    for (const { syllables, worth: own } of words) {
      const id = syllables[at] as CardId;
      worth.set(id, (worth.get(id) ?? 0) + own);
    }
    for (const id of pinned) if (worth.has(id)) worth.set(id, Infinity);
    return [...worth].sort((one, other) => other[1] - one[1]).map(([id]) => id);
  });
}

/**
 * Wishes about cards said of the syllables that carry them: a wanted card becomes the foremost syllable
 * with it, and what its words are worth that of every such syllable. Of other piles the wishes stay.
 */
export function wishesInSyllables(
  piles: readonly (readonly CardId[])[],
  wishes: BoardWishes,
): BoardWishes {
  const { wanted = [], worth = [], focus = [] } = wishes;
  const all = [...new Set(piles.flat())];
  const carrying = (id: CardId): readonly CardId[] =>
    all.filter((own) => own === id || cardsOnCard(own).includes(id));
  const bestOf = (id: CardId): readonly CardId[] => {
    const first = piles.map((pile) =>
      pile.find((own) => own === id || cardsOnCard(own).includes(id)),
    );
    const places = piles.map((pile, at) => pile.indexOf(first[at] as CardId));
    const at = places.reduce(
      (best, place, own) =>
        place >= 0 && (best < 0 || place < (places[best] as number)) ? own : best,
      -1,
    );
    return at < 0 ? [] : [first[at] as CardId];
  };
  return {
    ...wishes,
    wanted: [...new Set(wanted.flatMap(bestOf))],
    worth: worth.flatMap(([id, times]) => carrying(id).map((own) => [own, times] as const)),
    focus: focus.flatMap(carrying),
  };
}
