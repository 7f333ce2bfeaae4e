import { describe, expect, it } from 'vitest';
import { makeRandom } from '../../core/random.ts';
import { countSteps } from '../steps.ts';
import { attacksOn, bytesPerSign, stepsPerSign, thrownBy } from './attack.ts';

/**
 * Whatever reads what comes from outside is given hostile inputs: it never throws, and takes no more than so
 * many steps, and so much memory, for each sign. A hundred thousand are tried in bench/hostile.bench.ts.
 */
const steps = countSteps();
// Only what is made after that is counted.
const { PARSERS } = await import('./parsers.ts');

const INPUTS = 60;
const MOST_STEPS = 1000;
const MOST_BYTES = 200;

const seed = Number(process.env.PROPERTY_SEED ?? 1);
const attacked = PARSERS.map((parser) => ({
  name: parser.name,
  attacks: attacksOn(parser, INPUTS, makeRandom(seed)),
}));

describe.each(attacked)('$name', ({ attacks }) => {
  it('throws on no input', async () => {
    const thrown = await Promise.all(attacks.map(thrownBy));
    expect(thrown.filter((one) => one !== null)).toEqual([]);
  });

  it('stays within its steps', () => {
    expect(stepsPerSign(attacks, steps)).toBeLessThan(MOST_STEPS);
  });
});

it('holds on to little memory for what was read, all of it together', async () => {
  const all = attacked.flatMap(({ attacks }) => attacks);
  expect(await bytesPerSign(all)).toBeLessThan(MOST_BYTES);
});
