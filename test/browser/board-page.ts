import type { Locator, Page } from 'playwright-core';
import { figureOf } from './terms.ts';

/** The names of the piles of a board of three, left to right. */
export type PileName = 'Beginnings' | 'Vowels' | 'Endings';

/** A pile on the table, with its title and its cards. */
export const pile = (page: Page, name: PileName): Locator =>
  page.getByRole('region', { name, exact: true });

const trayPile = (page: Page, name: PileName): Locator =>
  page
    .getByRole('region', { name: 'Cards that could lie here too' })
    .getByRole('list', { name: `More ${name.toLowerCase()}`, exact: true });

/** A card by its letters, in a pile on the table. */
export const cardIn = (page: Page, name: PileName, letters: string): Locator =>
  pile(page, name).getByRole('button', { name: new RegExp(`^${letters},`) });

/** A card by its letters, among those that could lie in a pile. */
export const cardFor = (page: Page, name: PileName, letters: string): Locator =>
  trayPile(page, name).getByRole('button', { name: new RegExp(`^${letters},`) });

/** The ids of the cards of a pile, from top to bottom. */
export const inPile = (page: Page, name: PileName): Promise<(string | null)[]> =>
  pile(page, name)
    .getByRole('button')
    .evaluateAll((cards) => cards.map((card) => card.getAttribute('data-card')));

/** The card that follows the pointer, or a finger: drawn for eyes alone, since who hears moves cards by keys. */
export const draggedCard = (page: Page): Locator => page.locator('.dragged');

/** What was said last of the board, or what is proven of it. */
export const told = (page: Page): Locator => page.getByRole('status', { name: 'About this board' });

/** How many of a kind the board makes. */
export const count = async (page: Page, kind: string): Promise<number> =>
  Number(await figureOf(page, kind));

/** The words of the board, each in a cell of a table. */
export const wordCells = (page: Page): Locator => page.getByRole('table').getByRole('cell');

/** The real ones among them. */
export const realCells = (page: Page): Locator => wordCells(page).filter({ hasText: ', real' });
