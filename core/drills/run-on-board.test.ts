import { expect, it } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import type { WordTable } from '../boards/judge/word-table.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { buildDrill } from './build-drill.ts';
import { reshuffleRun, tableOf } from './edit-drill.ts';
import { runOnBoard } from './run-on-board.ts';

const engine = { lexicon: builtLexicon, screen: createWordScreen(SCREEN_DATA) };

/** The first steps of prefix, base and suffix, where real words are few. */
it.each([55, 57, 60, 64, 67])(
  'a drill of prefix, base and suffix at step %i is shorter rather than mostly nonsense',
  (step) => {
    const taught = taughtUpTo(SEQUENCE, step);
    const drill = buildDrill({ taught, seed: step, shape: 'affixes' }, engine);
    const { run, shortfall } = drill;
    const real = run.filter(({ kind }) => kind === 'real').length;
    expect(real).toBeGreaterThan(5);
    expect(real / run.length).toBeGreaterThanOrEqual(0.6);
    if (run.length < 30) expect(shortfall?.message).toContain(`${run.length} flips`);

    // What a screen counts over this board is the run that a drill made of it has.
    const asked = { flips: 30, realShare: 0.5, seed: 20 };
    const counted = runOnBoard(tableOf(drill, taught, engine) as WordTable, asked, engine.lexicon);
    const used = reshuffleRun(drill, taught, engine, asked);
    expect(used.kind === 'changed' && used.drill.run).toEqual(counted.flips);
    expect(counted.flips.length + counted.missing.flips).toBe(30);
    const realCounted = counted.flips.filter(({ kind }) => kind === 'real').length;
    expect(realCounted / counted.flips.length).toBeGreaterThanOrEqual(0.6);
  },
);
