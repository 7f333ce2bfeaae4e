/**
 * Forms of a check read by an invented class, over and over: how far apart forms are, and how
 * far apart one child's scores on two of them are by chance alone. Each child reads a card with
 * a chance whose log-odds are child + card + what is this child's own with this card; a word is
 * right when all its cards are. Nothing changes between forms, so that every difference is
 * the forms' or chance.
 */
import type { CheckForm } from '../core/checks/check-form.ts';
import { type Chances, makeChances } from './classroom/chances.ts';

export interface TrialSpec {
  readonly forms: readonly CheckForm[];
  readonly seed: number;
  /** Standard deviations of log-odds: between children, cards, and children with a card. */
  readonly children?: number;
  readonly cards?: number;
  readonly own?: number;
  /** The log-odds of a middling child on a middling card. */
  readonly middle?: number;
}

export interface Trial {
  /** Between forms, of the mean score of the class: standard deviation in items. */
  readonly formDeviation: number;
  /** The mean over pairs of forms of the correlation between children's scores. */
  readonly reliability: number;
  /** Of the difference of one child's scores on two forms: standard deviation in items, and what 9 of 10 do not exceed. */
  readonly differenceDeviation: number;
  readonly nineOfTen: number;
  readonly meanScore: number;
}

const CHILDREN = 200;

/** Reads every form with every child once. */
export function tryForms({
  forms,
  seed,
  children = 1,
  cards = 0.9,
  own = 0.5,
  middle = 2,
}: TrialSpec): Trial {
  const draw = makeChances(seed);
  const hard = new Map<string, number>();
  const abilities = Array.from({ length: CHILDREN }, () => draw.normal(middle, children));
  const owns = abilities.map(() => new Map<string, number>());
  const chance = (child: number, card: string): number => {
    const ofCard = drawOnce(hard, card, cards, draw);
    const ofPair = drawOnce(owns[child] as Map<string, number>, card, own, draw);
    return 1 / (1 + Math.exp(-((abilities[child] as number) + ofCard + ofPair)));
  };
  const expected = forms.map(({ items }) =>
    abilities.map((_, child) =>
      items.map(({ cards: ids }) => ids.reduce((all, id) => all * chance(child, id), 1)),
    ),
  );
  const scores = expected.map((form) =>
    form.map((items) => items.filter((right) => draw.happens(right)).length),
  );
  const means = expected.map((form) => mean(form.map((items) => items.reduce((a, b) => a + b, 0))));
  const differences: number[] = [];
  const correlations: number[] = [];
  for (let one = 0; one < forms.length; one++) {
    for (let other = one + 1; other < forms.length; other++) {
      const [left, right] = [scores[one] as number[], scores[other] as number[]];
      correlations.push(correlation(left, right));
      for (const [child, score] of left.entries()) {
        differences.push(score - (right[child] as number));
      }
    }
  }
  const sizes = differences.map(Math.abs).sort((a, b) => a - b);
  return {
    formDeviation: deviation(means),
    reliability: mean(correlations),
    differenceDeviation: Math.sqrt(mean(differences.map((one) => one * one))),
    nineOfTen: sizes[Math.floor(sizes.length * 0.9)] ?? 0,
    meanScore: mean(scores.flat()),
  };
}

function drawOnce(known: Map<string, number>, card: string, spread: number, draw: Chances): number {
  const there = known.get(card);
  if (there !== undefined) return there;
  const fresh = draw.normal(0, spread);
  known.set(card, fresh);
  return fresh;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
}

function correlation(left: readonly number[], right: readonly number[]): number {
  const [one, other] = [mean(left), mean(right)];
  const together = mean(left.map((value, at) => (value - one) * ((right[at] as number) - other)));
  return together / (deviation(left) * deviation(right));
}
