import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import type { Random } from '../../core/random.ts';
import { hostileText, hostileValue } from './hostile-text.ts';
import type { Parser } from './parsers.ts';

/** One hostile input of a parser. */
export interface Attack {
  readonly given: unknown;
  /** Its size: signs of the text, or of the value as JSON. */
  readonly signs: number;
  /** Reads it. May throw, or give a promise that does. */
  readonly read: () => unknown;
}

/** So many hostile inputs of a parser, by a seeded chance. */
export function attacksOn(parser: Parser, count: number, random: Random): readonly Attack[] {
  const make = parser.takes === 'text' ? hostileText : hostileValue;
  return Array.from({ length: count }, () => {
    const given = make(parser.samples, random);
    const read = () => (parser.read as (given: unknown) => unknown)(given);
    return { given, signs: sizeOf(given), read };
  });
}

/** What was thrown, or null. */
export async function thrownBy({ given, read }: Attack): Promise<string | null> {
  try {
    await read();
    return null;
  } catch (thrown) {
    const shown = typeof given === 'string' ? given : inspected(given);
    return `${thrown} on ${JSON.stringify(shown.slice(0, 300))}`;
  }
}

/** Steps that reading takes for each of its signs, all of these together; `steps` counts them (test/steps.ts). */
export function stepsPerSign(
  attacks: readonly Attack[],
  steps: (work: () => unknown) => number,
): number {
  return steps(() => attacks.map(quietly)) / signsOf(attacks);
}

/** Bytes of memory that what was read holds on to for each sign, all of these together. */
export async function bytesPerSign(attacks: readonly Attack[]): Promise<number> {
  // Once before, so that what is made once for all does not count.
  for (const attack of attacks) await quietly(attack);
  const held: unknown[] = [];
  const before = heldNow();
  for (const attack of attacks) held.push(await quietly(attack));
  const after = heldNow();
  if (held.length !== attacks.length) throw new Error('Something was not read.');
  return (after - before) / signsOf(attacks);
}

/**
 * Bytes of memory that reading takes for each sign, what it lets go of again among them. Where the engine
 * collects meanwhile it seems less: the most of some tries is meant.
 */
export async function bytesTaken(attack: Attack): Promise<number> {
  const before = heldNow();
  await quietly(attack);
  return (process.memoryUsage().heapUsed - before) / signsOf([attack]);
}

function quietly({ read }: Attack): unknown {
  try {
    return Promise.resolve(read()).catch(() => null);
  } catch {
    return null;
  }
}

/** A short input is counted as this many signs: to begin with anything takes a while. */
const LEAST_SIGNS = 200;

function signsOf(attacks: readonly Attack[]): number {
  return attacks.reduce((sum, { signs }) => sum + Math.max(LEAST_SIGNS, signs), 0);
}

setFlagsFromString('--expose-gc');
const collect: () => void = runInNewContext('gc');

function heldNow(): number {
  collect();
  return process.memoryUsage().heapUsed;
}

function sizeOf(given: unknown): number {
  return (typeof given === 'string' ? given : inspected(given)).length;
}

/** A value as JSON; one that has none, or is nested too deep for it, as a word. */
function inspected(given: unknown): string {
  try {
    return JSON.stringify(given) ?? 'undefined';
  } catch {
    return 'something deep';
  }
}
