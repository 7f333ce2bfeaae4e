import type { Locator, Page } from 'playwright-core';

/** What is up now, and what she says of it. */
export const atNow = (page: Page): Locator =>
  page.getByRole('region', { name: 'Now', exact: true });

/** The part of the warm-up, as its head says it. */
export const deskPart = (page: Page): Locator =>
  page.getByRole('banner').getByText(/^((Visual|Auditory|Blending) drill|Dictation|The end)$/);

/** How far it is in this part: `8 of 30`. */
export const deskCount = (page: Page): Locator =>
  page.getByRole('banner').getByText(/^\d+ of \d+$/);

/** The desk as she works at it: the cards that can be marked, of now and of the word before. */
export const markCards = (page: Page): Locator =>
  page.getByRole('group', { name: 'Touch the card that broke' }).getByRole('button');

/** The cards of the word before, each of which can be marked late. */
export const cardsBefore = (page: Page): Locator =>
  page.getByRole('group', { name: 'The word before' }).getByRole('button');

/** Those of these cards of which it is marked that they broke. */
export const broken = (cards: Locator): Locator =>
  cards.and(cards.page().getByRole('button', { pressed: true }));

/** The cards of the row at the desk. On a button stand its key and a note, too: only the card knows them apart. */
export const deskCards = (page: Page): Locator => markCards(page).locator('.card');

/** The letters of all of them in a row. */
export const deskLetters = async (page: Page): Promise<string> =>
  (await deskCards(page).allTextContents()).join('');

/** A mark that was made, with what was heard, once it is kept for good. */
export const keptMark = (page: Page): Locator => page.getByRole('button', { name: /, kept$/ });

/** Whose turn it is in a correction, and what is said. */
export const turnSaid = (page: Page): Locator => atNow(page).getByRole('status');

const calling = (page: Page): Locator => page.getByRole('region', { name: 'Calling on children' });

/** The child who reads. */
export const reader = (page: Page): Locator => calling(page).getByRole('status');

/** The children who read next. */
export const upcoming = (page: Page): Locator =>
  calling(page).getByRole('group', { name: 'Reads next' }).getByRole('button');

/** Whether each child is here today. */
export const hereToday = (page: Page): Locator =>
  calling(page).getByRole('checkbox', { name: / is here$/ });

/** Who reads, said above the row where the screen is small: the name, and a button to choose another. */
export const whoReads = (page: Page): Locator => page.getByRole('region', { name: 'Who reads' });

/** What goes on, back and over: at the foot of the screen, or beside. */
export const deskBar = (page: Page): Locator => page.getByRole('toolbar', { name: 'The warm-up' });

/** The end of a warm-up, on the desk. */
export const deskEnd = (page: Page): Locator => page.getByRole('region', { name: 'The end' });

/** The warm-ups that How it went lists, newest first. */
export const warmUpsListed = (page: Page): Locator =>
  page.getByRole('list', { name: 'Warm-ups, newest first' }).getByRole('listitem');

/** The marks on How it went, each a button that puts it right. */
export const marksMade = (page: Page): Locator =>
  page.getByRole('button', { name: /\. Put right$/ });
