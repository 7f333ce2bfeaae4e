import { markingOf } from '../../core/learners/belief/marking.ts';
import { startTracker } from '../../core/learners/tracker.ts';
import { type Classroom, runClassroom } from './classroom.ts';
import { type Compared, comparedCards, type Judged, judgeIntervals } from './intervals.ts';
import { calibrationError, type Forecast, type Forecaster, forecasts, logLoss } from './judge.ts';
import { fitTracing, knowledgeTracing } from './knowledge-tracing.ts';
import { writtenDown } from './marked.ts';
import { performanceFactors } from './performance-factors.ts';
import { movingAverage, runningAverage } from './running-average.ts';
import { TUNING_SEEDS } from './seeds.ts';
import type { World } from './worlds.ts';

/** What came out in a world: losses in nats, lower is better. */
export interface WorldFigures {
  readonly name: string;
  readonly ours: number;
  /** What the true chances themselves would lose: no forecaster can do better. */
  readonly truth: number;
  readonly rivals: Readonly<Record<Rival, number>>;
  readonly calibration: number;
  /** On school days, and after three and six weeks without school. */
  readonly intervals: Judged;
  readonly afterBreak: Judged;
  readonly compared: readonly Compared[];
}

/** What our forecasts are compared with. */
export const RIVALS = ['average', 'moving average', 'card mean', 'PFA', 'BKT'] as const;
export type Rival = (typeof RIVALS)[number];

/** The classes of a world, as she writes them down. */
export function classesOf(world: World, seeds: readonly number[]): readonly Classroom[] {
  return seeds.map((seed) => {
    const classroom = runClassroom({ ...world, seed });
    return world.written ? writtenDown(classroom, world.written) : classroom;
  });
}

/**
 * Judges our model and its rivals. Every rival has the best of several settings, chosen on the
 * very classes it is judged on; tracing is fitted to other classes of the same world, heard perfectly.
 */
export function judgeWorld(world: World, seeds: readonly number[]): WorldFigures {
  const classes = classesOf(world, seeds);
  const all = (make: (classroom: Classroom) => Forecaster): readonly Forecast[] =>
    classes.flatMap((classroom) => forecasts(make(classroom), classroom));
  const best = (makers: readonly (() => Forecaster)[]) =>
    Math.min(...makers.map((make) => logLoss(all(make))));
  const ours = all(({ observations }) => startTracker(markingOf(observations, 'read')));
  const share = shareRight(classes);
  const training = TUNING_SEEDS.map(
    (seed) => runClassroom({ ...world, seed, named: 1, misheard: 0 }).observations,
  );
  const compared = comparedCards(classes);
  return {
    name: world.name,
    ours: logLoss(ours),
    truth: logLoss(ours.map((one) => ({ ...one, p: one.truth }))),
    rivals: {
      average: best([1, 2, 4, 8].map((worth) => () => runningAverage(share, worth))),
      'moving average': best([0.05, 0.1, 0.2, 0.3].map((rate) => () => movingAverage(share, rate))),
      'card mean': best([2, 8].map((worth) => () => runningAverage(share, worth, 'card'))),
      PFA: best([0.1, 0.25, 0.5].map((rate) => () => performanceFactors(rate))),
      BKT: best(
        [false, true].map((forgets) => () => knowledgeTracing(tracingOf(training, forgets))),
      ),
    },
    calibration: calibrationError(ours),
    intervals: judgeIntervals(compared.filter(({ afterBreak }) => !afterBreak)),
    afterBreak: judgeIntervals(compared.filter(({ afterBreak }) => afterBreak)),
    compared,
  };
}

const fitted = new WeakMap<object, Map<boolean, ReturnType<typeof fitTracing>>>();

/** Tracing fitted to classes, once. */
function tracingOf(training: Parameters<typeof fitTracing>[0], forgets: boolean) {
  const known = fitted.get(training) ?? new Map<boolean, ReturnType<typeof fitTracing>>();
  fitted.set(training, known);
  const found = known.get(forgets) ?? fitTracing(training, forgets);
  known.set(forgets, found);
  return found;
}

/** The share of own readings' cards that go right, by their true chances. */
function shareRight(classes: readonly Classroom[]): number {
  const chances = classes.flatMap(({ truths }) => truths.flat());
  return chances.reduce((sum, chance) => sum + chance, 0) / chances.length;
}
