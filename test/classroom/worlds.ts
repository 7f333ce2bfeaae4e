/**
 * A family of hidden truths, so that no model can win by being made like the one it is judged on. The
 * numbers of our model were settled on others (docs/mastery.md). The worlds called `late` were written
 * after those; since the model was changed once more after them, UNTOUCHED were written last of all.
 */
import type { ClassroomSpec } from './classroom.ts';
import type { Written } from './marked.ts';
import { crossed } from './truths/crossed.ts';
import { confusions, curves, sudden } from './truths/curves.ts';
import { disturbed } from './truths/disturbed.ts';
import { echoes } from './truths/echoes.ts';
import { allOrNone } from './truths/known-or-not.ts';
import { spurts } from './truths/spurts.ts';
import { traces } from './truths/traces.ts';

/** A world: how a class in it is made, and what she writes down of it. */
export interface World extends Omit<ClassroomSpec, 'seed'> {
  readonly name: string;
  readonly written?: Written;
  readonly late?: true;
}

const WEEKS = 6;

/** Worlds in which right and wrong are both marked. */
export const WORLDS: readonly World[] = [
  { name: 'traces that fade', truth: traces() },
  { name: 'fading half as fast again', truth: traces({ fading: 0.65 }) },
  { name: 'a sharp threshold', truth: traces({ noise: 0.12 }) },
  { name: 'careless: 6–20% slips', truth: traces({ slip: [0.06, 0.2] }) },
  { name: 'a third of all pairs stubborn', truth: traces({ stubborn: 0.35 }) },
  { name: 'still, pairs alike', truth: crossed({ pair: 0 }) },
  { name: 'still, pairs differ by 0.8', truth: crossed({ pair: 0.8 }) },
  { name: 'still, pairs differ by 1.6', truth: crossed({ pair: 1.6 }) },
  { name: 'still, one pair in eight far off', truth: crossed({ pair: 0.3, odd: 0.12 }) },
  { name: 'known or not, nothing lost', truth: allOrNone({ learn: 0.06, lose: 0 }) },
  { name: 'known or not, 1% lost a day', truth: allOrNone({ learn: 0.12, lose: 0.01 }) },
  { name: 'learning curves', truth: curves({ rate: 0.08 }) },
  { name: 'half-lives', truth: curves({ rate: 0.3, halfLife: 6 }) },
  { name: 'sudden insight', truth: sudden },
  { name: 'cards taken for each other', truth: confusions },
  { name: 'one day in five tired', truth: crossed({ pair: 0.6, gain: 0.02, tired: 1.5 }) },
  { name: 'three in ten away', truth: traces(), absent: 0.3 },
  { name: 'four pupils', truth: traces(), pupils: 4 },
  { name: 'thirty pupils', truth: traces(), pupils: 30, weeks: 5 },
  {
    name: 'mistakes unnamed, misheard',
    truth: curves({ rate: 0.08 }),
    named: 0.25,
    misheard: 0.06,
  },
  { name: 'readers chosen by need', truth: crossed({ pair: 0.8, gain: 0.03 }), chosen: true },
  { name: 'only readings alone', truth: traces(), written: 'alone' },
  { name: 'class of 22, three in ten alone', truth: traces(), pupils: 22, alone: 0.3, weeks: 5 },
  {
    name: 'vowels apart from consonants',
    truth: crossed({ pair: 0.3, vowels: 1.2, gain: 0.02 }),
    late: true,
  },
  { name: 'moods: each day another', truth: crossed({ pair: 0.5, days: 0.8 }), late: true },
  {
    name: 'quick half-lives, few alone',
    truth: curves({ rate: 0.5, halfLife: 3 }),
    alone: 0.25,
    late: true,
  },
  {
    name: 'known or not, learned at once, misheard',
    truth: allOrNone({ learn: 0.5, lose: 0.02, first: 0.1 }),
    misheard: 0.05,
    late: true,
  },
].map((world) => ({ weeks: WEEKS, ...world }) as World);

/**
 * Worlds on which nothing was ever settled: written when the model was done, looked at once, and not a
 * number of it was changed since. Once one is, they are worlds like the others, and new ones are due.
 */
export const UNTOUCHED: readonly World[] = [
  { name: 'what is new disturbs what came before', truth: disturbed },
  { name: 'what was just heard is echoed', truth: echoes },
  { name: 'growth in spurts, worse Mondays', truth: spurts },
].map((world) => ({ weeks: WEEKS, ...world }));

/**
 * Worlds of which only mistakes are written down, wholly or mostly. Most words are read by one child: the
 * more is truly read together, the more what goes right there is taken for what single children can.
 */
export const MISTAKES_ONLY: readonly World[] = [
  { name: 'mistakes beside the class, fading', truth: traces(), written: 'mistakes beside class' },
  {
    name: 'mistakes beside the class, still',
    truth: crossed({ pair: 0.8 }),
    written: 'mistakes beside class',
  },
  {
    name: 'mistakes beside the class, and checks',
    truth: curves({ rate: 0.08 }),
    written: 'mistakes, and checks',
  },
].map((world) => ({ weeks: WEEKS, alone: 0.8, ...world }) as World);
