import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { loadLexicon, loadScreen } from '../../../cli/engine.ts';
import type { Board } from '../../../core/boards/shapes/board.ts';
import { type CardId, graphemeOf } from '../../../core/language/card-id.ts';
import { makeSyllableId } from '../../../core/language/syllable-card.ts';
import { SEQUENCE } from '../../../core/sequence/built-in.ts';
import { makeProgress, taughtOf } from '../../../core/sequence/progress.ts';
import { screenText } from '../../../core/words/own-text.ts';
import { CARD_KINDS } from '../../../print/cards/grid.ts';
import { inks } from '../../../print/ink.ts';
import { openTypeface } from '../../../print/typeface.ts';
import { ANDIKA } from '../../../print/typeface-files.ts';
import { layCards } from './lay-cards.ts';
import { type Choices, choices as initial } from './print-choices.ts';
import type { CardThing } from './print-things.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const [lexicon, screen] = [loadLexicon(), loadScreen()];
const look = {
  paper: 'letter',
  inks: inks(false),
  typeface,
  grey: false,
  pictures: null,
  style: 'classroom',
} as const;

function stockAt(step: number, boards: { today?: Board; table?: Board } = {}) {
  const progress = makeProgress(SEQUENCE, step);
  const { today = null, table = null } = boards;
  const sources = { lexicon, screen, sentences: [] };
  const newest = (): CardId[] => ['sh=SH'];
  return { progress, taught: taughtOf(progress), newest, today, table, sources };
}

/** What some choices make, index cards where they do not say. */
const laid = (choices: Choices, stock: ReturnType<typeof stockAt>) =>
  layCards(choices.kind as CardThing, choices, stock, look);
const choose = (some: Partial<Choices>): Choices => ({ ...initial.peek(), ...some });
const lettersOn = (made: ReturnType<typeof laid>) =>
  made.pages.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
  );

describe('what is printed', () => {
  it('is each taught card once, in the order in which they were taught', () => {
    const stock = stockAt(12);
    const made = laid(choose({ source: 'taught' }), stock);
    expect(made.count).toBe(stock.taught.correspondences.size);
    expect(made.pages).toHaveLength(Math.ceil(made.count / 4));
  });

  it('is the cards and words of some steps, whatever was taught', () => {
    const steps = SEQUENCE.steps.slice(4, 7).flatMap(({ items }) => items);
    const { count } = laid(choose({ source: 'steps', from: 5, to: 7 }), stockAt(0));
    expect(count).toBe(steps.filter(({ kind }) => kind !== 'habit').length);
  });

  it('is the words known by sight on cards of any kind, with what is learned by heart on the back', () => {
    for (const kind of CARD_KINDS) {
      const made = laid(choose({ kind, source: 'sight', backs: true }), stockAt(24));
      expect(made.count).toBe(stockAt(24).taught.irregularWords.size);
      expect(lettersOn(made)).toEqual(expect.arrayContaining(['said', 'ai; by rule: s, d']));
    }
  });

  it('is nothing where nothing was taught, and there are no pages then', () => {
    expect(laid(choose({}), stockAt(0))).toEqual({ pages: [], deck: null, count: 0, notes: [] });
  });

  it('keeps her own words that can be printed and says which cannot', () => {
    const own = 'said\n\n θ \nshit\nthrough';
    const made = laid(choose({ source: 'own', own, blank: 2 }), stockAt(3));
    expect(made.count).toBe(4);
    expect(made.notes).toHaveLength(2);
    expect(lettersOn(made)).toEqual(expect.arrayContaining(['said', 'through']));
    expect(lettersOn(made)).not.toContain('shit');
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
    const made = laid(choose({ kind: 'strips', source: 'today' }), stockAt(40, { today }));
    expect(made.count).toBeGreaterThan(4);
    expect(made.count).toBeLessThan(9);
    expect(made.notes[0]).toMatch(/^Left out: /);
    const left = new Set(made.notes[0]!.slice('Left out: '.length).split('.')[0]!.split(', '));
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

  it('is a board of syllables as well, on strips and on cards, with what kind of syllable each is', () => {
    const today: Board = {
      shape: 'beats-closed',
      piles: [
        [makeSyllableId(['n=N', 'a=AE', 'p=P']), makeSyllableId(['p=P', 'u=AH', 'm=M', 'p=P'])],
        [makeSyllableId(['k=K', 'i=IH', 'n=N'])],
      ],
    };
    const stock = stockAt(60, { today });
    for (const kind of ['strips', 'index'] as const) {
      const made = laid(choose({ kind, source: 'today', backs: true }), stock);
      expect(made.notes).toEqual([]);
      expect(made.count).toBe(3);
      const letters = lettersOn(made);
      expect(letters).toEqual(expect.arrayContaining(['nap', 'pump', 'kin']));
      expect(letters).toEqual(expect.arrayContaining(['/n/ /ă/ /p/']));
      expect(letters.join(' ')).toContain('closed: a consonant ends it');
    }
  });

  it('says so when there is no board', () => {
    const { pages, notes } = laid(choose({ kind: 'strips' }), stockAt(3));
    expect(pages).toEqual([]);
    expect(notes).toEqual(['There is no board here yet.']);
  });
});
