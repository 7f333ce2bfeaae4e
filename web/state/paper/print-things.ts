import { CARD_KINDS } from '../../../print/cards/grid.ts';

/** Sheets of paper that are no cards. */
const SHEETS = ['board', 'plan', 'dictation', 'words', 'home', 'check'] as const;
/** A sheet, by what is on it. */
export type SheetKind = (typeof SHEETS)[number];

/** Cards of some kind, or binder strips. */
export type CardThing = (typeof CARD_KINDS)[number] | 'strips';

/** All that can be printed or shown: cards, binder strips, sheets, slides. */
export const THINGS = [...CARD_KINDS, 'strips', ...SHEETS, 'slides'] as const;
export type PrintThing = (typeof THINGS)[number];

/** What it is called in the list. */
export const thingNames: Readonly<Record<PrintThing, string>> = {
  index: 'Index cards, 3 × 5 in',
  half: 'Half sheets, for a group',
  desk: 'Small, for a desk',
  strips: 'Binder strips',
  board: 'Which card in which pile',
  slides: 'Slides for a projector',
  plan: 'Today’s plan',
  dictation: 'Dictation',
  words: 'Words to read',
  home: 'Home practice',
  check: 'A short check',
};

/** The list as she looks through it: by where a thing is used. */
export const THING_GROUPS: readonly {
  readonly title: string;
  readonly things: readonly PrintThing[];
}[] = [
  { title: 'Cards', things: CARD_KINDS },
  { title: 'For the board', things: ['strips', 'board', 'slides'] },
  { title: 'For you', things: ['plan', 'dictation'] },
  { title: 'For children', things: ['words', 'home', 'check'] },
];

/** Whether it is a sheet. */
export function isSheet(thing: PrintThing): thing is SheetKind {
  return (SHEETS as readonly PrintThing[]).includes(thing);
}

/** Whether it is made of cards, which may have backs. */
export function isOfCards(thing: PrintThing): thing is CardThing {
  return !isSheet(thing) && thing !== 'slides';
}
