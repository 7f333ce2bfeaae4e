import { logistic } from '../../core/learners/belief/grid.ts';
import type { Observation } from '../../core/learners/observation.ts';
import { creditOf } from './credit.ts';
import type { Forecaster } from './judge.ts';

/**
 * Performance-factor analysis (Pavlik, Cen & Koedinger 2009), learned while it goes: the log-odds are
 * the child's, the card's, and a weight each for the logarithm of how often the child got the card right
 * and wrong before. Steps by AdaGrad (Duchi, Hazan & Singer 2011).
 */
export function performanceFactors(rate: number): Forecaster {
  const weights = new Map<string, { value: number; squares: number }>();
  const counts = new Map<string, { right: number; wrong: number }>();
  const weightOf = (key: string, start: number) => {
    let weight = weights.get(key);
    if (!weight) {
      weight = { value: start, squares: 1 };
      weights.set(key, weight);
    }
    return weight;
  };
  const factorsOf = (child: string | null, card: string) => {
    const { right, wrong } = counts.get(`${child} ${card}`) ?? { right: 0, wrong: 0 };
    return [
      { weight: weightOf('start', 1.2), by: 1 },
      { weight: weightOf(`child ${child}`, 0), by: 1 },
      { weight: weightOf(`card ${card}`, 0), by: 1 },
      { weight: weightOf('right', 0.5), by: Math.log1p(right) },
      { weight: weightOf('wrong', -0.5), by: Math.log1p(wrong) },
    ];
  };
  const expect = ({ child, cards }: Observation) =>
    cards.map((card) =>
      logistic(factorsOf(child, card).reduce((sum, { weight, by }) => sum + weight.value * by, 0)),
    );
  return {
    expect,
    observe(reading) {
      const { child, cards } = reading;
      if (child === null) return;
      const chances = expect(reading);
      const { well, wrong } = creditOf(reading, chances);
      const credits = cards.map((_, at) => [well[at] as number, wrong[at] as number] as const);
      for (const [at, card] of cards.entries()) {
        const [good, bad] = credits[at] ?? [0, 0];
        const gradient = good - (good + bad) * (chances[at] as number);
        for (const { weight, by } of factorsOf(child, card)) {
          weight.squares += (gradient * by) ** 2;
          weight.value += (rate * gradient * by) / Math.sqrt(weight.squares);
        }
        const count = counts.get(`${child} ${card}`) ?? { right: 0, wrong: 0 };
        count.right += good;
        count.wrong += bad;
        counts.set(`${child} ${card}`, count);
      }
    },
  };
}
