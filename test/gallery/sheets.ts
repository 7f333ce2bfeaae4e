import type { Flip } from '../../core/boards/shapes/board.ts';
import type { CheckForm } from '../../core/checks/check-form.ts';
import type { Drill } from '../../core/drills/drill.ts';
import type { CardId } from '../../core/language/card-id.ts';
import type { Phoneme } from '../../core/language/phonemes.ts';
import { cardPages } from '../../print/cards/card-pages.ts';
import { CARD_KINDS } from '../../print/cards/grid.ts';
import { paperCard } from '../../print/cards/paper-card.ts';
import { inks } from '../../print/ink.ts';
import type { Page } from '../../print/page.ts';
import { boardSheet } from '../../print/sheets/board-sheet.ts';
import { checkSheet } from '../../print/sheets/check-sheet.ts';
import { dictationSheet } from '../../print/sheets/dictation-sheet.ts';
import { homeSheet } from '../../print/sheets/home-sheet.ts';
import { planSheet } from '../../print/sheets/plan-sheet.ts';
import { wordsSheet } from '../../print/sheets/words-sheet.ts';
import type { Typeface } from '../../print/typeface.ts';

/** Every kind of sheet and card, with an invented plan for an invented class; by name. */
export function allSheets(typeface: Typeface): Readonly<Record<string, readonly Page[]>> {
  const look = { paper: 'letter', typeface, inks: inks(false), style: 'classroom' } as const;
  const cardLook = { inks: inks(false), typeface, grey: false, pictures: null };
  const cards = EVERY.map(paperCard);
  return {
    plan: planSheet({ drill, taught: new Set(EVERY), whom: 'Maple', day: 'Monday' }, look),
    board: boardSheet({ board: drill.board, real: WORDS, nonsense: ['shig'], stopped: 0 }, look),
    words: wordsSheet({ title: 'Words', below: '', words: WORDS }, look),
    dictation: dictationSheet(
      { words: dictated, sentences: [sentence], heardAlso: () => [] },
      '',
      look,
    ),
    'home practice': homeSheet({ cards: EVERY, words: WORDS, sentences: [sentence.text] }, look),
    check: checkSheet(form, look),
    ...Object.fromEntries(
      CARD_KINDS.map((kind) => [
        `cards, ${kind}`,
        cardPages(cards, { kind, paper: 'letter', backs: null }, cardLook),
      ]),
    ),
  };
}

const EVERY: readonly CardId[] = [
  'sh=SH',
  'a=AE',
  'a_e=EY',
  'igh=AY',
  'st=S+T',
  'le=AX+L',
  'ed=T',
  'ck=K',
  'qu=K+W',
];
const WORDS = ['ship', 'shack', 'stash', 'tape', 'night', 'table'];
const flip = (kind: Flip['kind'], word: string, cards: CardId[], sounds: Phoneme[]): Flip => ({
  kind,
  word,
  cards,
  sounds,
});
const drill: Drill = {
  seed: 1,
  visual: EVERY,
  auditory: [{ phonemes: ['K'], spellings: ['c=K', 'k=K', 'ck=K'] }],
  board: {
    shape: 'syllable',
    piles: [
      ['sh=SH', 'st=S+T'],
      ['a=AE', 'i=IH'],
      ['ck=K', 'p=P'],
    ],
  },
  run: [
    flip('real', 'shack', ['sh=SH', 'a=AE', 'ck=K'], ['SH', 'AE', 'K']),
    flip('real', 'stack', ['st=S+T', 'a=AE', 'ck=K'], ['S', 'T', 'AE', 'K']),
    flip('real', 'stick', ['st=S+T', 'i=IH', 'ck=K'], ['S', 'T', 'IH', 'K']),
    flip('nonsense', 'stip', ['st=S+T', 'i=IH', 'p=P'], ['S', 'T', 'IH', 'P']),
  ],
  shortfall: null,
};
const form: CheckForm = {
  kind: 'nonsense-words',
  seed: 7,
  items: Array.from({ length: 20 }, () => ({
    text: 'mip',
    cards: ['m=M', 'i=IH', 'p=P'],
    answers: [['M', 'IH', 'P']] as const,
  })),
  hardness: 0,
  offBy: 0,
};
const dictated = WORDS.map((text) => ({ text, isNew: true }));
const sentence = { text: 'The ship had a stack of tape.', isNew: false };
