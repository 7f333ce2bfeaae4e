import { makeRandom } from '../core/random.ts';
import { type Attack, attacksOn, thrownBy } from '../test/hostile/attack.ts';
import { PARSERS } from '../test/hostile/parsers.ts';
import { type Measurement, summary } from './measure.ts';

/** So many in all, the same number for each parser. */
const INPUTS = 100_000;
/** Inputs that are made and read before the next are made. */
const AT_ONCE = 100;
/** To begin with anything may take so long, and each thousand signs as long again; in milliseconds. */
const BUDGET = 20;
/** An input over its budget is read again so often, since the machine may have been busy with other things. */
const TRIES = 8;

/**
 * A hundred thousand hostile inputs of everything that reads what comes from outside. The row tells how many
 * made it throw, how many took longer than their budget, and how long a thousand signs take.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const random = makeRandom(2026);
  const values: number[] = [];
  const thrown: string[] = [];
  const slow: string[] = [];
  const each = Math.ceil(INPUTS / PARSERS.length);
  for (const parser of PARSERS) {
    for (let made = 0; made < each; made += AT_ONCE) {
      for (const attack of attacksOn(parser, Math.min(AT_ONCE, each - made), random)) {
        const failed = await thrownBy(attack);
        if (failed !== null) thrown.push(`${parser.name}: ${failed}`);
        const took = await timeOf(attack);
        values.push(took / thousands(attack));
        if (took > BUDGET + BUDGET * thousands(attack)) {
          slow.push(`${parser.name}: ${took.toFixed(0)} ms for ${attack.signs} signs`);
        }
      }
    }
  }
  for (const line of [...thrown, ...slow].slice(0, 20)) process.stderr.write(`${line}\n`);
  const name = `${values.length} hostile inputs: ${thrown.length} thrown, ${slow.length} over budget; a thousand signs`;
  return [summary({ name, unit: 'ms', aim: thrown.length + slow.length > 0 ? 0 : BUDGET, values })];
}

/** The quickest of some tries, where the first is over the budget. */
async function timeOf(attack: Attack): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let tries = 0; tries < TRIES; tries++) {
    const started = performance.now();
    await thrownBy(attack);
    least = Math.min(least, performance.now() - started);
    if (least <= BUDGET + BUDGET * thousands(attack)) break;
  }
  return least;
}

function thousands({ signs }: Attack): number {
  return Math.max(1, signs / 1000);
}
