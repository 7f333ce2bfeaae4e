import type { LaidPaper } from './laid.ts';
import { layCards } from './lay-cards.ts';
import { laySheet } from './lay-sheets.ts';
import { laySlides } from './lay-slides.ts';
import type { Look } from './look.ts';
import type { Choices } from './print-choices.ts';
import { isSheet } from './print-things.ts';
import type { Stock } from './stock.ts';

/**
 * Lays out what she chose. Every paper of the app goes this way: what was chosen (`Choices`), what there is
 * to print from (`Stock`), pages or slides (`Laid`), and the file (`fileOf`).
 */
export function layOut(choices: Choices, stock: Stock, look: Look): LaidPaper {
  const { kind } = choices;
  if (kind === 'slides') return laySlides(choices, stock, look);
  return isSheet(kind)
    ? laySheet(kind, choices, stock, look)
    : layCards(kind, choices, stock, look);
}
