import { makeRandom } from '../core/random.ts';
import { attacksOn, bytesPerSign, bytesTaken } from '../test/hostile/attack.ts';
import { PARSERS } from '../test/hostile/parsers.ts';
import { type Measurement, summary } from './measure.ts';

/** Hostile inputs made for each parser, and how many of them, the longest, are read. */
const MADE = 300;
const READ = 8;
/** Bytes for each sign that what was read may hold, and that reading it may take on the way. */
const HELD = 200;
const TAKEN = 1000;
const TRIES = 3;

/**
 * The memory of each parser, by the heap: what is held by what it read, after a collection, and what reading
 * took before any. A value is the worst input of a parser; who is over a budget is named on the way.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const held: number[] = [];
  const taken: number[] = [];
  for (const parser of PARSERS) {
    const longest = [...attacksOn(parser, MADE, makeRandom(2026))]
      .sort((left, right) => right.signs - left.signs)
      .slice(0, READ);
    const holds = await bytesPerSign(longest);
    const takes = await worst(longest.map((attack) => () => mostOf(() => bytesTaken(attack))));
    held.push(holds);
    taken.push(takes);
    if (holds > HELD || takes > TAKEN) {
      const line = `holds ${holds.toFixed(0)}, takes ${takes.toFixed(0)} bytes for each sign`;
      process.stderr.write(`${parser.name}: ${line}\n`);
    }
  }
  return [
    summary({
      name: 'memory held by what was read, a thousand signs',
      unit: 'KB',
      aim: HELD,
      values: held,
    }),
    summary({
      name: 'memory taken by reading a thousand signs',
      unit: 'KB',
      aim: TAKEN,
      values: taken,
    }),
  ];
}

function mostOf(measure: () => Promise<number>): Promise<number> {
  return worst(Array.from({ length: TRIES }, () => measure));
}

async function worst(measures: readonly (() => Promise<number>)[]): Promise<number> {
  let most = Number.NEGATIVE_INFINITY;
  for (const measure of measures) most = Math.max(most, await measure());
  return most;
}
