/**
 * Prints the tables of docs/mastery.md: the model of what is known, beside its rivals, in worlds that
 * nothing was fitted to; and how much more pupils know for being taught by plan. Takes a minute.
 */
import { startTracker } from '../core/learners/tracker.ts';
import { type Classroom, type ClassroomSpec, runClassroom } from '../test/classroom/classroom.ts';
import { judgeCounts, judgeIntervals } from '../test/classroom/intervals.ts';
import {
  calibrationError,
  type Forecast,
  type Forecaster,
  forecasts,
  logLoss,
  mean,
} from '../test/classroom/judge.ts';
import { fitTracing, knowledgeTracing } from '../test/classroom/knowledge-tracing.ts';
import { planned } from '../test/classroom/planned.ts';
import { runningAverage } from '../test/classroom/running-average.ts';
import {
  HELD_OUT_SEEDS,
  TRAINING_SEEDS,
  WHOLE_CLASS,
  WHOLE_CLASS_SEEDS,
} from '../test/classroom/seeds.ts';

/** Worlds by name; `aloneOnly` writes down only what children read alone. */
const WORLDS: readonly (Omit<ClassroomSpec, 'seed'> & {
  readonly name: string;
  readonly classes: number;
  readonly aloneOnly?: true;
})[] = [
  { name: 'usual', classes: 12 },
  { name: 'only readings alone are written down', classes: 6, aloneOnly: true },
  { name: 'whole class of 22, three in ten words alone', classes: 6, ...WHOLE_CLASS },
  { name: 'forgets half as fast again', classes: 6, world: { fading: 0.65 } },
  { name: 'learns half as fast', classes: 6, world: { rate: 0.25 } },
  { name: 'all or none: sharp threshold', classes: 6, world: { noise: 0.12 } },
  { name: 'careless: 6–20% slips', classes: 6, world: { slip: [0.06, 0.2] } },
  { name: 'a third of all cards stubborn', classes: 6, world: { stubborn: 0.35 } },
  { name: 'teacher mishears 12%, names 40%', classes: 6, misheard: 0.12, named: 0.4 },
];
const PLANNED = 20;

const training = [
  ...TRAINING_SEEDS.map((seed) => runClassroom({ seed }).observations),
  ...WHOLE_CLASS_SEEDS.map((seed) => runClassroom({ seed, ...WHOLE_CLASS }).observations),
];
const plain = fitTracing(training, false);
const forgetting = fitTracing(training, true);
const seen = training.flatMap((observations) => forecasts(runningAverage(0.5, 2), observations));
const share = mean(seen.map(({ right }) => Number(right)));

print(
  'world',
  'ours',
  'average',
  'BKT',
  'BKT+',
  'truth',
  'ECE',
  'in interval',
  'width',
  'counts in',
  'forecasts',
);
for (const { name, classes, aloneOnly, ...spec } of WORLDS) {
  const heldOut = HELD_OUT_SEEDS.slice(0, classes).map((seed) => {
    const whole = runClassroom({ seed, ...spec });
    return aloneOnly ? onlyAlone(whole) : whole;
  });
  const forecast = (make: () => Forecaster) =>
    heldOut.flatMap(({ observations }) => forecasts(make(), observations));
  const ours = forecast(startTracker);
  const average = [1, 2, 4, 8, 16].map((worth) => forecast(() => runningAverage(share, worth)));
  const intervals = judgeIntervals(heldOut);
  const counts = judgeCounts(heldOut);
  print(
    name,
    logLoss(ours).toFixed(4),
    Math.min(...average.map(logLoss)).toFixed(4),
    logLoss(forecast(() => knowledgeTracing(plain))).toFixed(4),
    logLoss(forecast(() => knowledgeTracing(forgetting))).toFixed(4),
    logLoss(heldOut.flatMap(truthOf)).toFixed(4),
    calibrationError(ours).toFixed(3),
    `${(intervals.share * 100).toFixed(1)}%`,
    intervals.width.toFixed(2),
    `${(counts.share * 100).toFixed(1)}%`,
    String(ours.length),
  );
}

const gains = Array.from({ length: PLANNED }, (_, n) => {
  const seed = 201 + n;
  return runClassroom({ seed, plan: planned }).knownAtEnd - runClassroom({ seed }).knownAtEnd;
});
const gain = mean(gains);
const spread = Math.sqrt(mean(gains.map((one) => (one - gain) ** 2)));
const range = `${Math.min(...gains).toFixed(4)} to ${Math.max(...gains).toFixed(4)}`;
process.stdout.write(
  `\nplanned − by chance: ${gain.toFixed(4)}, deviation ${spread.toFixed(4)}, ${range}\n`,
);

function onlyAlone(classroom: Classroom): Classroom {
  const { observations, truths } = classroom;
  return {
    ...classroom,
    observations: observations.filter(({ child }) => child !== null),
    truths: truths.filter((_, at) => observations[at]?.child !== null),
  };
}

/** What forecasts would be if the true chances were known. */
function truthOf({ observations, truths }: Classroom): readonly Forecast[] {
  return observations.flatMap(({ child, right, broke, cards }, n) => {
    if (child === null || (!right && broke === null)) return [];
    const last = right ? cards.length : (broke ?? 0);
    const known = truths[n]?.slice(0, last) ?? [];
    return known.map((p, at) => ({ p, right: right || at < last - 1 }));
  });
}

function print(...cells: readonly string[]): void {
  process.stdout.write(`| ${cells.join(' | ')} |\n`);
}
