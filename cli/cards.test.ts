import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type CardId, graphemeOf } from '../core/language/card-id.ts';
import { screenText } from '../core/words/own-text.ts';
import { renderPdf } from '../test/pdf-pixels.ts';
import { board } from './board.ts';
import { cards } from './cards.ts';
import { loadLexicon, loadScreen } from './engine.ts';

const folder = mkdtempSync(join(tmpdir(), 'cards-'));
const file = join(folder, 'cards.pdf');
const make = async (...args: string[]) =>
  JSON.parse(await cards([...args, '-o', file, '--json'])) as {
    cards: number;
    pages: number;
    piles?: CardId[][];
  };

describe('the cards command', () => {
  test('prints the words known by sight in place of the cards, of all taught or of some steps', async () => {
    const list = 'a,m,s,word:was,word:said';
    expect(await make('--taught', list, '--sight', '--backs')).toMatchObject({
      cards: 2,
      pages: 2,
    });
    expect((await make('--steps', '1-10', '--sight')).cards).toBeGreaterThan(2);
    await expect(make('--taught', 'a,m,s', '--sight')).rejects.toThrow('No word known by sight');
  });

  test.each([
    ['index', 4],
    ['half', 2],
    ['desk', 16],
  ])('prints all taught cards as %s cards, %i to a sheet', async (kind, each) => {
    const made = await make('--taught', 'a,m,s,t,i,sh,ck', '--kind', kind);
    expect(made).toMatchObject({ cards: 7, pages: Math.ceil(7 / each) });
    expect(await renderPdf(readFileSync(file), 20)).toHaveLength(made.pages);
  });

  test('prints the new cards of some steps, with backs', async () => {
    const { cards: fronts, pages } = await make('--steps', '2-3', '--backs', '--kind', 'half');
    expect(pages).toBe(2 * Math.ceil(fronts / 2));
  });

  test('prints strips whose piles make no word that is stopped', async () => {
    const taught = 'f,d,h,t,a,i,o,u,g,ck,sh,s';
    const made = await make('--taught', taught, '--kind', 'strips', '--shape', 'closed');
    expect(made.pages).toBe(Math.max(...made.piles!.map(({ length }) => length)));
    const [beginnings, vowels, endings] = made.piles!.map((pile) => pile.map(graphemeOf));
    const all = beginnings!.flatMap((b) => vowels!.flatMap((v) => endings!.map((e) => b + v + e)));
    expect(all.length).toBeGreaterThan(20);
    const [lexicon, screen] = [loadLexicon(), loadScreen()];
    for (const word of all)
      expect(screenText(word, lexicon, screen).verdict, word).not.toBe('stop');
    // The best board that may skip words has some that are stopped: the strips left them out.
    const free = JSON.parse(board(['--taught', taught, '--shape', 'closed', '--json']));
    expect(free.stopped).toBeGreaterThan(0);
  });

  test.each<readonly [string, RegExp, readonly string[]]>([
    ['an unknown kind', /index, half, desk, strips/, ['--taught', 'a', '--kind', 'huge']],
    ['an unknown paper', /letter, a4/, ['--taught', 'a', '--paper', 'a3']],
    ['steps that are not there', /steps from 1 to/, ['--steps', '8-4']],
    ['a letter that cannot be printed', /no “θ”/, ['--own', 'θ']],
    ['a word that is stopped', /word screen stops/, ['--own', 'said,fuck']],
    ['nothing at all', /no cards to print/, ['--own', ' , ']],
  ])('says kindly what is wrong with %s', async (_, says, args) => {
    await expect(cards([...args, '-o', file])).rejects.toThrow(says);
  });

  test('asks where to write', async () => {
    await expect(cards(['--taught', 'a'])).rejects.toThrow('-o cards.pdf');
  });
});
