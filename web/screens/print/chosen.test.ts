import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { loadLexicon, loadScreen } from '../../../cli/engine.ts';
import type { Board } from '../../../core/boards/shapes/board.ts';
import { type CardId, graphemeOf } from '../../../core/language/card-id.ts';
import { SEQUENCE } from '../../../core/sequence/built-in.ts';
import { makeProgress, taughtOf } from '../../../core/sequence/progress.ts';
import { screenText } from '../../../core/words/own-text.ts';
import { inks } from '../../../print/ink.ts';
import { openTypeface } from '../../../print/typeface.ts';
import { ANDIKA } from '../../../print/typeface-files.ts';
import type { Engine } from '../../state/engine.ts';
import { type Choices, choices as initial } from '../../state/paper/print-choices.ts';
import type { CardThing } from '../../state/paper/print-things.ts';
import { chosenPages as pagesOf, type Stock } from './chosen.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const [lexicon, screen] = [loadLexicon(), loadScreen()];
const look = { inks: inks(false), typeface, grey: false, pictures: null };

function stockAt(step: number, boards: { today?: Board; table?: Board } = {}): Stock {
  const progress = makeProgress(SEQUENCE, step);
  const { today = null, table = null } = boards;
  // Of the engine only the words and the screen are asked here.
  const ready = { lexicon, screen } as Engine;
  const newest = (): CardId[] => ['sh=SH'];
  return { progress, taught: taughtOf(progress), newest, today, table, ready, typeface };
}

/** The pages of some choices, index cards where they do not say. */
const chosenPages = (choices: Choices, stock: Stock, drawn: typeof look) =>
  pagesOf(choices.kind as CardThing, choices, stock, drawn);
const choose = (some: Partial<Choices>): Choices => ({ ...initial.peek(), ...some });
const lettersOn = (chosen: ReturnType<typeof chosenPages>) =>
  chosen.pages.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
  );

describe('what is printed', () => {
  it('is each taught card once, in the order in which they were taught', () => {
    const stock = stockAt(12);
    const chosen = chosenPages(choose({ source: 'taught' }), stock, look);
    expect(chosen.count).toBe(stock.taught.correspondences.size);
    expect(chosen.pages).toHaveLength(Math.ceil(chosen.count / 4));
  });

  it('is the cards of some steps, whatever was taught', () => {
    const steps = SEQUENCE.steps.slice(4, 7).flatMap(({ items }) => items);
    const { count } = chosenPages(choose({ source: 'steps', from: 5, to: 7 }), stockAt(0), look);
    expect(count).toBe(steps.filter(({ kind }) => kind === 'card').length);
  });

  it('is nothing where nothing was taught, and there are no pages then', () => {
    expect(chosenPages(choose({}), stockAt(0), look)).toEqual({ pages: [], count: 0, notes: [] });
  });

  it('keeps her own words that can be printed and says which cannot', () => {
    const own = 'said\n\n θ \nshit\nthrough';
    const chosen = chosenPages(choose({ source: 'own', own, blank: 2 }), stockAt(3), look);
    expect(chosen.count).toBe(4);
    expect(chosen.notes).toHaveLength(2);
    expect(lettersOn(chosen)).toEqual(expect.arrayContaining(['said', 'through']));
    expect(lettersOn(chosen)).not.toContain('shit');
  });

  it('leaves cards out of binder strips until no row of them is stopped', () => {
    const today: Board = {
      shape: 'closed',
      piles: [
        ['f=F', 'd=D', 'h=HH'],
        ['u=AH', 'i=IH', 'a=AE'],
        ['ck=K', 't=T', 'n=N'],
      ],
    };
    const chosen = chosenPages(
      choose({ kind: 'strips', source: 'today' }),
      stockAt(40, { today }),
      look,
    );
    expect(chosen.count).toBeGreaterThan(4);
    expect(chosen.count).toBeLessThan(9);
    expect(chosen.notes[0]).toMatch(/^Left out: /);
    const left = new Set(chosen.notes[0]!.slice('Left out: '.length).split('.')[0]!.split(', '));
    const [first, middle, last] = today.piles.map((pile) =>
      pile.map(graphemeOf).filter((letters) => !left.has(letters)),
    );
    for (const b of first!) {
      for (const v of middle!) {
        for (const e of last!) {
          expect(screenText(b + v + e, lexicon, screen).verdict, b + v + e).not.toBe('stop');
        }
      }
    }
  });

  it('says so when there is no board', () => {
    const { pages, notes } = chosenPages(choose({ kind: 'strips' }), stockAt(3), look);
    expect(pages).toEqual([]);
    expect(notes).toEqual(['There is no board here yet.']);
  });
});
