import fc from 'fast-check';
import { expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { soundedNames } from '../words/name-sounds.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { decideWord, NO_RULES, screenForClass } from '../words/teacher-rules.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { buildDrill } from './build-drill.ts';
import { mendRun } from './mend-run.ts';

const lexicon = builtLexicon;
const plain = { lexicon, screen: createWordScreen(SCREEN_DATA) };

test('a drill without anything blocked stays the very same', () => {
  const taught = taughtUpTo(SEQUENCE, 30);
  const drill = buildDrill({ taught, seed: 3 }, plain);
  expect(mendRun(drill, taught, plain)).toBe(drill);
});

test('what she blocks, and a child’s name, are gone from a drill that was planned before', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 14, max: SEQUENCE.steps.length }),
      fc.nat(9999),
      fc.array(fc.nat(29), { minLength: 1, maxLength: 5 }),
      (step, seed, places) => {
        const taught = taughtUpTo(SEQUENCE, step);
        const drill = buildDrill({ taught, seed }, plain);
        const words = places.flatMap((place) => drill.run[place]?.word ?? []);
        const rules = words
          .slice(1)
          .reduce((all, word) => decideWord(all, 'block', word), NO_RULES);
        const names = soundedNames(words.slice(0, 1), lexicon);
        const screen = screenForClass(plain.screen, rules, names);
        const mended = mendRun(drill, taught, { lexicon, screen });
        for (const { word, sounds } of mended.run) {
          expect(screen.judge(word, sounds).verdict).toBe('clear');
        }
        expect(mended.run.length).toBeGreaterThanOrEqual(drill.run.length - words.length * 3);
        expect(new Set(mended.run.map(({ word }) => word)).size).toBe(mended.run.length);
      },
    ),
    { numRuns: 25 },
  );
});
