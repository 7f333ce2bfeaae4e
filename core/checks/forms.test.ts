import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { tryForms } from '../../test/form-trial.ts';
import { judgeWord } from '../boards/judge/judge.ts';
import { lookAlike } from '../drills/visual.ts';
import { type CardId, makeSightId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import type { CheckForm } from './check-form.ts';
import { makeLetterForm } from './letter-form.ts';
import { makeNonsenseForm } from './nonsense-form.ts';
import { makeSightForm } from './sight-form.ts';

const screen = createWordScreen(SCREEN_DATA);
const contextAt = (step: number) => ({ taught: taughtUpTo(SEQUENCE, step), lexicon, screen });
/** The nonsense forms of the first seeds at a step, made once. */
const formsAt = (step: number) => {
  const made = formsMade.get(step) ?? FORM_SEEDS.map((seed) => formOf(step, seed));
  formsMade.set(step, made);
  return made;
};
const FORM_SEEDS = [0, 1, 2, 3, 4, 5, 6, 7];
const formsMade = new Map<number, readonly CheckForm[]>();
const formOf = (step: number, seed: number) => makeNonsenseForm(contextAt(step), seed, 30).form;
const seeds = fc.nat(2 ** 31);
const steps = fc.constantFrom(14, 24, 40, 60, 90, 136);

describe('a form of letter sounds', () => {
  test('asks for every taught grapheme as often as any other, give or take one', () => {
    fc.assert(
      fc.property(steps, seeds, fc.integer({ min: 1, max: 110 }), (step, seed, count) => {
        const { taught } = contextAt(step);
        const { items } = makeLetterForm(taught, seed, count).form;
        expect(items).toHaveLength(count);
        const times = new Map<string, number>();
        for (const { text } of items) times.set(text, (times.get(text) ?? 0) + 1);
        const counts = [...times.values()];
        const graphemes = new Set(
          [...taught.correspondences].flatMap((id) => {
            const card = correspondenceById.get(id);
            return card && card.kind !== 'cluster' && card.kind !== 'silent' ? card.grapheme : [];
          }),
        );
        const least = times.size < graphemes.size ? 0 : Math.min(...counts);
        expect(Math.max(...counts) - least).toBeLessThanOrEqual(1);
        for (const { cards, answers } of items) {
          expect(taught.correspondences.has(cards[0] as CardId)).toBe(true);
          expect(answers.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 40 },
    );
  });

  test.each([
    ['n', ['N']],
    ['t', ['T']],
    ['s', ['S', 'Z']],
    ['c', ['K', 'S']],
    ['g', ['G', 'JH']],
  ])(
    'takes of a lone %s the sounds that a letter has by itself, and none that its neighbor gives it',
    (text, sounds) => {
      const { items } = makeLetterForm(contextAt(136).taught, 1, 250).form;
      const item = items.find((each) => each.text === text);
      expect(item?.answers.map((answer) => answer.join(' ')).sort()).toEqual(sounds);
    },
  );

  test('takes every taught sound of a grapheme as right', () => {
    const { taught } = contextAt(136);
    const { items } = makeLetterForm(taught, 1, 250).form;
    const c = items.find(({ text }) => text === 'c');
    expect(c?.answers).toEqual(expect.arrayContaining([['K'], ['S']]));
  });

  test('has no look-alikes side by side, from round to round neither, once fourteen steps are taught', () => {
    fc.assert(
      fc.property(steps, seeds, (step, seed) => {
        const { items } = makeLetterForm(contextAt(step).taught, seed, 110).form;
        const near = items.filter((item, at) => {
          const before = items[at - 1];
          return (
            before?.text === item.text || lookAlike(before?.cards[0] ?? '', item.cards[0] ?? '')
          );
        });
        expect(near).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test('says kindly when nothing was taught', () => {
    const { form, shortfall } = makeLetterForm(taughtUpTo(SEQUENCE, 0), 1, 20);
    expect(form.items).toEqual([]);
    expect(shortfall?.code).toBe('nothing-taught');
  });
});

describe('a form of words at sight', () => {
  test('asks for every word that was taught whole as often as any other, give or take one', () => {
    fc.assert(
      fc.property(steps, seeds, fc.integer({ min: 1, max: 110 }), (step, seed, count) => {
        const { taught } = contextAt(step);
        const { items } = makeSightForm(taught, seed, count, lexicon).form;
        expect(items).toHaveLength(count);
        const times = new Map<string, number>();
        for (const { cards } of items) {
          const [id = ''] = cards;
          times.set(id, (times.get(id) ?? 0) + 1);
        }
        const words = [...taught.irregularWords].map(makeSightId);
        for (const id of times.keys()) expect(words).toContain(id);
        const least = times.size < words.length ? 0 : Math.min(...times.values());
        expect(Math.max(...times.values()) - least).toBeLessThanOrEqual(1);
        if (words.length > 1) {
          expect(items.filter((item, at) => item.text === items[at - 1]?.text)).toEqual([]);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('takes every way to say a word as right, and writes it as it is written', () => {
    const { items } = makeSightForm({ irregularWords: new Set(['read', 'i']) }, 1, 2, lexicon).form;
    const read = items.find(({ text }) => text === 'read');
    expect(read?.answers).toEqual(
      expect.arrayContaining([
        ['R', 'IY', 'D'],
        ['R', 'EH', 'D'],
      ]),
    );
    expect(items.map(({ text }) => text).sort()).toEqual(['I', 'read']);
  });

  test('says kindly when no word was taught whole', () => {
    const { form, shortfall } = makeSightForm(taughtUpTo(SEQUENCE, 0), 1, 20, lexicon);
    expect([form.items, shortfall?.code]).toEqual([[], 'no-sight-words']);
  });
});

describe('a form of nonsense words', () => {
  test('has good nonsense only, of taught cards, none twice, and is the same for the same seed', () => {
    for (const step of [14, 40, 90]) {
      const context = contextAt(step);
      const { form } = makeNonsenseForm(context, 7, 30);
      expect(makeNonsenseForm(context, 7, 30).form).toEqual(form);
      expect(new Set(form.items.map(({ text }) => text)).size).toBe(30);
      for (const { text, cards, answers } of form.items) {
        const built = judgeWord(cards, context);
        expect([built.word, built.kind]).toEqual([text, 'nonsense']);
        expect(built.sounds).toEqual(answers[0]);
        expect(screen.judge(text, built.sounds).verdict).toBe('clear');
      }
    }
  });

  test('is as hard as any other form: means within 0.02 standard deviations of single words, as many sounds give or take three', () => {
    for (const step of [24, 60, 120]) {
      const forms = formsAt(step);
      for (const { offBy } of forms) expect(Math.abs(offBy)).toBeLessThanOrEqual(0.02);
      const lengths = forms.map(
        ({ items }) => items.flatMap(({ answers }) => answers[0] ?? []).length,
      );
      expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(6);
    }
  });

  test('asks for each card as often as any other form, give or take one', () => {
    // Held by tries, not by proof: a card may be off by one more where the pool is small (190 words at step 24)
    // or most cards were taught.
    for (const [step, mostOff] of [
      [24, 1],
      [60, 3],
      [120, 4],
    ] as const) {
      const forms = formsAt(step);
      const counts = forms.map(({ items }) => {
        const times = new Map<string, number>();
        for (const id of items.flatMap(({ cards }) => cards)) {
          times.set(id, (times.get(id) ?? 0) + 1);
        }
        return times;
      });
      const ranges = [...new Set(counts.flatMap((times) => [...times.keys()]))].map((id) => {
        const all = counts.map((times) => times.get(id) ?? 0);
        return Math.max(...all) - Math.min(...all);
      });
      expect(Math.max(...ranges)).toBeLessThanOrEqual(2);
      expect(ranges.filter((range) => range > 1).length).toBeLessThanOrEqual(mostOff);
    }
  });

  test('is as hard as any other for a class to which cards are of very different hardness', () => {
    // Cards differ by 0.9 on the log-odds scale; forms that match by hardness alone differ by 0.4 to 0.7 words.
    for (const [step, most] of [
      [24, 0.2],
      [60, 0.3],
      [120, 0.3],
    ] as const) {
      const forms = formsAt(step);
      const trials = [1, 2, 3, 4].map((seed) => tryForms({ forms, seed, cards: 0.9 }));
      const apart = trials.reduce((sum, { formDeviation }) => sum + formDeviation, 0) / 4;
      expect(apart).toBeLessThanOrEqual(most);
    }
  });

  test('is another one for another seed, and leaves out the words of earlier forms', () => {
    const context = contextAt(40);
    const first = makeNonsenseForm(context, 1, 30).form.items.map(({ text }) => text);
    const second = makeNonsenseForm(context, 2, 30).form.items.map(({ text }) => text);
    // A form has thirty words: two in three are others.
    expect(second.filter((text) => first.includes(text)).length).toBeLessThanOrEqual(10);
    const third = makeNonsenseForm(context, 1, 30, new Set(first)).form.items;
    expect(third.filter(({ text }) => first.includes(text))).toEqual([]);
  });

  test('brings most of the taught consonants and every short vowel', () => {
    const context = contextAt(30);
    const { items } = makeNonsenseForm(context, 3, 40).form;
    const asked = new Set(items.flatMap(({ cards }) => cards));
    const taught = [...context.taught.correspondences].flatMap((id) => {
      const card = correspondenceById.get(id);
      return card && card.kind !== 'cluster' ? [card] : [];
    });
    const vowels = taught.filter(({ kind }) => kind === 'short-vowel');
    expect(vowels.filter(({ id }) => !asked.has(id))).toEqual([]);
    const missed = taught.filter(({ id }) => !asked.has(id)).length;
    expect(missed / taught.length).toBeLessThan(0.25);
  });

  test('says how many there are when there are too few', () => {
    const { form, shortfall } = makeNonsenseForm(contextAt(5), 1, 200);
    expect(form.items.length).toBeLessThan(200);
    expect(shortfall?.code).toBe('few-words');
  });
});
