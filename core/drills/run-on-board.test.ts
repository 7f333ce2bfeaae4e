import { expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { buildDrill } from './build-drill.ts';

const engine = { lexicon: builtLexicon, screen: createWordScreen(SCREEN_DATA) };

/** The first steps of prefix, base and suffix, where real words are few. */
it.each([57, 60, 64])(
  'a drill of prefix, base and suffix at step %i is shorter rather than mostly nonsense',
  (step) => {
    const taught = taughtUpTo(SEQUENCE, step);
    const { run, shortfall } = buildDrill({ taught, seed: step, shape: 'affixes' }, engine);
    const real = run.filter(({ kind }) => kind === 'real').length;
    expect(real).toBeGreaterThan(5);
    expect(real / run.length).toBeGreaterThanOrEqual(0.6);
    if (run.length < 30) expect(shortfall?.message).toContain(`${run.length} flips`);
  },
);
