/**
 * The model of what is known, judged on invented pupils that nothing was fitted
 * to. They are made on another principle than the model (test/classroom/pupil.ts),
 * so that it cannot win by recognising itself; docs/mastery.md has all figures,
 * and the worlds in which it does worse.
 */
import { describe, expect, it } from 'vitest';
import { startTracker } from '../core/learners/tracker.ts';
import { runClassroom } from './classroom/classroom.ts';
import { judgeCounts, judgeIntervals } from './classroom/intervals.ts';
import { calibrationError, forecasts, logLoss, mean } from './classroom/judge.ts';
import { fitTracing, knowledgeTracing } from './classroom/knowledge-tracing.ts';
import { planned } from './classroom/planned.ts';
import { runningAverage } from './classroom/running-average.ts';
import { HELD_OUT_SEEDS, PLANNED_SEEDS, TRAINING_SEEDS } from './classroom/seeds.ts';

const classesOf = (seeds: readonly number[]) => seeds.map((seed) => runClassroom({ seed }));

describe('what is known of pupils that nothing was fitted to', () => {
  const training = classesOf(TRAINING_SEEDS);
  const heldOut = classesOf(HELD_OUT_SEEDS);
  const forecast = (make: () => Parameters<typeof forecasts>[0]) =>
    heldOut.flatMap(({ observations }) => forecasts(make(), observations));
  const ours = forecast(() => startTracker());

  it('forecasts single readings better than a running average, however that is started', () => {
    const trained = training.flatMap(({ observations }) =>
      forecasts(runningAverage(0.5, 2), observations),
    );
    const share = mean(trained.map(({ right }) => Number(right)));
    for (const worth of [1, 2, 4, 8, 16]) {
      const theirs = forecast(() => runningAverage(share, worth));
      expect(logLoss(theirs) - logLoss(ours)).toBeGreaterThan(0.01);
    }
  });

  it('forecasts them better than knowledge tracing fitted card by card, with and without forgetting', () => {
    for (const forgets of [false, true]) {
      const fitted = fitTracing(
        training.map(({ observations }) => observations),
        forgets,
      );
      const theirs = forecast(() => knowledgeTracing(fitted));
      expect(logLoss(theirs) - logLoss(ours)).toBeGreaterThan(0.003);
    }
  });

  it('is calibrated: of what it says goes right 8 times in 10, 8 in 10 go right, within 0.03', () => {
    expect(calibrationError(ours)).toBeLessThanOrEqual(0.03);
  });

  it('has 90% intervals that hold 85 to 95 of 100 true chances', () => {
    const { share, count } = judgeIntervals(heldOut);
    expect(count).toBeGreaterThan(5000);
    expect(share).toBeGreaterThanOrEqual(0.85);
    expect(share).toBeLessThanOrEqual(0.95);
  });
});

describe('how many of the cards that they met pupils know', () => {
  it('lies within the 90% interval of that number for 85 to 95 of 100', () => {
    const { share, count } = judgeCounts(classesOf(HELD_OUT_SEEDS));
    expect(count).toBeGreaterThan(500);
    expect(share).toBeGreaterThanOrEqual(0.85);
    expect(share).toBeLessThanOrEqual(0.95);
  });
});

describe('a planned review', () => {
  it('leaves pupils knowing more after eight weeks than one by chance of the same length', () => {
    for (const seed of PLANNED_SEEDS) {
      const byChance = runClassroom({ seed });
      const byPlan = runClassroom({ seed, plan: planned });
      expect(byPlan.observations).toHaveLength(byChance.observations.length);
      expect(byPlan.knownAtEnd - byChance.knownAtEnd).toBeGreaterThan(0.005);
    }
  });
});
