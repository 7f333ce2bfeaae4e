import { cardsMet } from '../core/boards/shapes/taught-cards.ts';
import { soundStyleFor } from '../core/language/accent/sound-style.ts';
import { type CardId, makeSightId } from '../core/language/card-id.ts';
import { soundLabel } from '../core/language/phonemes.ts';
import type { Taught } from '../core/language/taught.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { itemOfCard } from '../core/sequence/item.ts';
import type { Item } from '../core/sequence/sequence.ts';
import { stepOf } from '../core/sequence/step-of.ts';
import { teach } from '../core/sequence/teach.ts';
import { screenText } from '../core/words/own-text.ts';
import { sightParts } from '../core/words/sight-parts.ts';
import { wordsOfCards } from '../core/words/words-of-cards.ts';
import { RING_COUNTS, type RingCount } from '../print/binder.ts';
import { cardPages } from '../print/cards/card-pages.ts';
import type { CardLook } from '../print/cards/front.ts';
import { CARD_KINDS } from '../print/cards/grid.ts';
import { charactersThatFit, type OwnPlace } from '../print/cards/own-length.ts';
import {
  ownCard,
  type PaperCard,
  paperCard,
  sightCard,
  toldCard,
} from '../print/cards/paper-card.ts';
import { stripPages } from '../print/cards/strip-pages.ts';
import { withoutTwins } from '../print/cards/twins.ts';
import { makePdf } from '../print/document.ts';
import { TURNS } from '../print/duplex.ts';
import { inks } from '../print/ink.ts';
import type { Page } from '../print/page.ts';
import { BOARD_WISHES, readShape, readWishes, searchFor } from './board.ts';
import { type Here, loadHere, readTaught, taughtHere } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions, type Typed } from './options.ts';
import { loadPictures, loadTypeface, readOneOf, readOut, readPaper, writeOut } from './paper.ts';

const KINDS = [...CARD_KINDS, 'strips'] as const;
/** The most cards with her own text, and the most blank ones, in one file. */
const MOST_OWN = 200;

/** `cards --taught T -o FILE.pdf`: cards or binder strips to print and cut. */
export async function cards(args: readonly string[]): Promise<string> {
  const typed = readOptions(args, {
    ...BOARD_WISHES,
    steps: 'text',
    own: 'text',
    blank: 'text',
    sight: 'flag',
    kind: 'text',
    paper: 'text',
    holes: 'text',
    pictures: 'flag',
    grey: 'flag',
    backs: 'flag',
    turn: 'text',
    out: 'text',
  });
  if (typed.words.length > 0) fail(`cards takes options only; “${typed.words[0]}” is none.`);
  const out = readOut(typed, 'cards.pdf');
  const here = loadHere(typed);
  const kind = readOneOf(typed, 'kind', KINDS, 'index');
  const paper = readPaper(typed);
  const turn = readOneOf(typed, 'turn', TURNS, 'long');
  const backs = typed.flag('backs') ? turn : null;
  const look: CardLook = {
    inks: inks(typed.flag('grey')),
    typeface: loadTypeface(),
    grey: typed.flag('grey'),
    pictures: typed.flag('pictures') ? loadPictures() : null,
  };
  let pages: readonly Page[];
  let count: number;
  let piles: readonly (readonly CardId[])[] | null = null;
  if (kind === 'strips') {
    piles = pilesOf(typed, here);
    const rings = readRings(typed, paper === 'letter' ? 3 : 4);
    const strips = piles.map((pile) => backed(pile, typed, here));
    pages = stripPages(strips, { paper, rings, backs }, look);
    count = strips.flat().length;
  } else {
    const named = namedCards(typed, here);
    const told = look.pictures !== null || backs !== null;
    const chosen = [
      ...(told ? named : withoutTwins(named)),
      ...ownCards(typed, here, { kind, paper, pictured: look.pictures !== null }, look),
    ];
    if (chosen.length === 0) fail('There are no cards to print: say --taught, --steps or --own.');
    pages = cardPages(chosen, { kind, paper, backs }, look);
    count = chosen.length;
  }
  const bytes = await makePdf(
    { title: 'Cards', pages, ...(backs ? { turn: backs } : {}) },
    look.typeface,
  );
  writeOut(out, bytes);
  if (typed.flag('json')) {
    const made = { file: out, kind, paper, cards: count, pages: pages.length };
    return JSON.stringify(piles ? { ...made, piles } : made);
  }
  const sides = pages.length === 1 ? '1 page' : `${pages.length} pages`;
  return `${count} cards on ${sides}: ${out}\nPrint at 100 %; the ruler on the first page says whether the size is true.`;
}

/** The cards that were asked for; with `--sight` the words known by sight in their place. */
function namedCards(typed: Typed, here: Here): readonly PaperCard[] {
  if (!typed.flag('sight')) return backed(idsOf(typed, here), typed, here);
  const steps = typed.text('steps');
  const taught = taughtBy(typed, here);
  const { irregularWords } = steps === null ? taught : taughtHere(teach(stepItems(steps)), here);
  const words = [...irregularWords];
  if (words.length === 0) fail('No word known by sight is taught there. Say a later step.');
  const parts = (word: string) => sightParts(word, taught, here.lexicon);
  return words.map((word) => sightCard(makeSightId(word), parts(word)));
}

/** What `--taught` says, or what all steps up to the last of `--steps` teach. */
function taughtBy(typed: Typed, here: Here): Taught {
  const steps = typed.text('steps');
  return steps === null
    ? readTaught(typed.text('taught'), here)
    : taughtHere(teach(stepItems(`1-${lastOf(steps)}`)), here);
}

/** Cards with words that show them and their steps on the back, where backs are printed. */
function backed(ids: readonly CardId[], typed: Typed, here: Here): readonly PaperCard[] {
  if (!typed.flag('backs')) return ids.map(paperCard);
  const written = soundStyleFor(here.accent, 'classroom');
  const words = wordsOfCards(ids, 2, { taught: taughtBy(typed, here), ...here });
  return ids.map((id) =>
    toldCard(id, {
      said: (sounds, grapheme) => soundLabel(sounds, written, grapheme),
      words: (card) => words.get(card) ?? [],
      step: (card) => stepOf(SEQUENCE, itemOfCard(card)),
    }),
  );
}

/** The last step that `20-24` names. */
function lastOf(steps: string): string {
  return steps.trim().split('-').at(-1) ?? steps;
}

/** The cards that `--shape`, `--steps` or `--taught` names; none when none of them was typed. */
function idsOf(typed: Typed, here: Here): readonly CardId[] {
  if (typed.text('shape') !== null) return [...new Set(pilesOf(typed, here).flat())];
  const steps = typed.text('steps');
  if (steps !== null) return stepCards(steps);
  const taught = typed.text('taught');
  if (taught === null && (typed.text('own') !== null || typed.text('blank') !== null)) return [];
  return cardsMet(readTaught(taught, here)).map(({ id }) => id);
}

/** The piles of the best board on which no combination is stopped: paper cannot skip one. */
function pilesOf(typed: Typed, here: Here): readonly (readonly CardId[])[] {
  const shape = readShape(typed.text('shape') ?? 'syllable');
  const wishes = { ...readWishes(typed, shape), clean: true };
  return searchFor(readTaught(typed.text('taught'), here), shape, wishes, here).found.board.piles;
}

/** The cards of steps `20-24` or of step `24`, in their order. */
function stepCards(text: string): readonly CardId[] {
  return stepItems(text).flatMap((item) => (item.kind === 'card' ? [item.id] : []));
}

function stepItems(text: string): readonly Item[] {
  const last = SEQUENCE.steps.length;
  const [, first, end] = /^(\d+)(?:-(\d+))?$/.exec(text.trim()) ?? [];
  const [from, to] = [Number(first), Number(end ?? first)];
  if (!(from >= 1 && to >= from && to <= last)) {
    fail(`--steps takes steps from 1 to ${last}, such as 20-24; “${text}” is not that.`);
  }
  return SEQUENCE.steps.slice(from - 1, to).flatMap(({ items }): readonly Item[] => items);
}

/** Cards with the texts of `--own said,was`, and `--blank N` empty ones. */
function ownCards(
  typed: Typed,
  here: Here,
  place: OwnPlace,
  { typeface }: CardLook,
): readonly PaperCard[] {
  const texts = (typed.text('own') ?? '')
    .split(',')
    .map((text) => text.trim())
    .filter((text) => text !== '');
  if (texts.length > MOST_OWN) fail(`--own takes at most ${MOST_OWN} texts.`);
  for (const text of texts) {
    const [missing] = typeface.missing(text);
    if (missing) fail(`The letters of the cards have no “${missing}”. Leave it out of “${text}”.`);
    if (screenText(text, here.lexicon, here.screen).verdict === 'stop') {
      fail(`“${text}” is a word that the word screen stops. Choose another.`);
    }
    const fitting = charactersThatFit(text, place, typeface);
    if (fitting !== null) {
      fail(
        `“${text}” is too long for this card: about ${fitting} characters fit at a size children can read. Shorten it${place.kind === 'half' ? '' : ', or print it on --kind half'}.`,
      );
    }
  }
  const blank = typed.whole('blank', 0, 0, MOST_OWN);
  return [...texts, ...Array<string>(blank).fill('')].map(ownCard);
}

function readRings(typed: Typed, otherwise: RingCount): RingCount {
  const asked = typed.whole('holes', otherwise, 2, 4);
  return RING_COUNTS.find((count) => count === asked) ?? otherwise;
}
