import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { judgeWord } from '../boards/judge/judge.ts';
import type { Flip } from '../boards/shapes/board.ts';
import { shapeById } from '../boards/shapes/shape-list.ts';
import type { CardId } from '../language/card-id.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import type { Drill } from './drill.ts';
import { ownFlip, withFlip } from './own-flip.ts';

const context = {
  taught: taughtUpTo(SEQUENCE, 40),
  lexicon,
  screen: createWordScreen(SCREEN_DATA),
};
const drillOn = (shape: string, run: readonly Flip[] = []): Drill => ({
  seed: 1,
  visual: [],
  auditory: [],
  board: { shape, piles: [[], [], []] },
  run,
  shortfall: null,
});

describe('a word of her own', () => {
  it.each([
    ['ship', 'real', ['sh=SH', 'i=IH', 'p=P']],
    [' Duck ', 'real', ['d=D', 'u=AH', 'ck=K']],
    ['vem', 'nonsense', ['v=V', 'e=EH', 'm=M']],
  ])('%s is laid with taught cards, as %s', (word, kind, cards) => {
    const own = ownFlip(word, drillOn('syllable'), context);
    expect(own).toMatchObject({ kind: 'laid', flip: { kind, cards } });
  });

  it.each([
    ['what is no word', 'two words', 'letters alone'],
    ['what is in the run', 'mat', 'in the run already'],
    ['a card that was not taught', 'fight', 'not taught yet'],
    ['a word to know by sight', 'said', 'by sight'],
    ['what the screen stops', 'shit', ''],
    ['what breaks a rule', 'tac', ''],
    ['a word of another shape', 'rabbit', 'rabbit'],
  ])('is refused for %s, and says why', (_, word, says) => {
    const mat = { word: 'mat', cards: [], sounds: [], kind: 'real' } as const;
    const own = ownFlip(word, drillOn('syllable', [mat]), context);
    expect(own.kind).toBe('refused');
    if (own.kind === 'refused') expect(own.message).toContain(says);
  });

  it('is never one that the board would not show', () => {
    const letters = fc.constantFrom(...'abcdefghiklmnopstu');
    const shape = shapeById.get('syllable');
    fc.assert(
      fc.property(fc.array(letters, { minLength: 2, maxLength: 5 }), (written) => {
        const own = ownFlip(written.join(''), drillOn('syllable'), context);
        if (own.kind === 'refused') {
          expect(own.message).not.toBe('');
          return;
        }
        const judged = judgeWord(own.flip.cards, context, shape);
        expect([judged.word, judged.kind]).toEqual([written.join(''), own.flip.kind]);
      }),
    );
  });
});

describe('its place in the run', () => {
  const flip = (word: string): Flip => ({
    cards: [...word].map((letter): CardId => `${letter}=${letter}`),
    word,
    sounds: [],
    kind: 'real',
  });
  const wordsOf = (run: readonly Flip[]) => run.map(({ word }) => word);

  it('is between two words of which each differs in one card, where there are such', () => {
    const run = ['mat', 'map', 'sap', 'sip'].map(flip);
    expect(wordsOf(withFlip(run, flip('tap')))).toEqual(['mat', 'map', 'tap', 'sap', 'sip']);
  });

  it('is where the fewest cards turn at once, and no word is lost', () => {
    const words = fc.array(fc.stringMatching(/^[abc]{3}$/), { maxLength: 8 });
    fc.assert(
      fc.property(words, fc.stringMatching(/^[abc]{3}$/), (all, word) => {
        const run = all.map(flip);
        const apart = (one: string | undefined, other: string | undefined) =>
          one === undefined || other === undefined
            ? 1
            : [...one].filter((letter, pile) => letter !== other[pile]).length;
        const cost = (place: number) => apart(all[place - 1], word) + apart(word, all[place]);
        const made = wordsOf(withFlip(run, flip(word)));
        const costs = [...all, ''].map((_, place) => cost(place));
        const places = costs.flatMap((each, place) => (each === Math.min(...costs) ? [place] : []));
        expect(places.map((place) => all.toSpliced(place, 0, word))).toContainEqual(made);
      }),
    );
  });
});
