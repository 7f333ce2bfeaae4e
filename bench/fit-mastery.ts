/**
 * Fits the numbers of the model of what is known to invented classes, and prints
 * them as they stand in core/learners/tracker-settings.ts. Each number in turn is
 * moved up and down and kept where it does better, by smaller and smaller steps
 * (pattern search: Hooke & Jeeves 1961). Better is a lower sum of two losses: of
 * forecasts of single readings, and of the belief about each pupil's true chance.
 */
import { estimateCard } from '../core/learners/estimate.ts';
import type { Known } from '../core/learners/known.ts';
import type { Observation } from '../core/learners/observation.ts';
import { startTracker } from '../core/learners/tracker.ts';
import { TRACKER_SETTINGS, type TrackerSettings } from '../core/learners/tracker-settings.ts';
import { type WordParts, wordParts } from '../core/learners/word-parts.ts';
import { type Classroom, runClassroom, type State } from '../test/classroom/classroom.ts';
import { type Forecaster, forecasts, logLoss, mean } from '../test/classroom/judge.ts';
import { TRAINING_SEEDS, WHOLE_CLASS, WHOLE_CLASS_SEEDS } from '../test/classroom/seeds.ts';

const WEIGHT_OF_TRUTH = 0.2;
const ROUNDS = Number(process.argv[2] ?? 6);

/**
 * The weight of a reading together is a judgement: an invented chorus hides less than a real one.
 * The widening is chosen last, so that intervals hold somewhat more than 90 of 100 true chances of
 * the training classes, for classes differ.
 */
const SET_BY_HAND: ReadonlySet<string> = new Set(['places', 'cards', 'togetherWeight', 'widening']);

type Name = Exclude<keyof TrackerSettings, 'places'> | 'middle' | 'ending' | 'beginning';

const shifted: ReadonlySet<Name> = new Set([
  'start',
  'ease',
  'middle',
  'ending',
  'beginning',
  'habit',
]);

/** Every other class writes down only what children read alone. */
const small = TRAINING_SEEDS.map((seed): Classroom => {
  const whole = runClassroom({ seed });
  if (seed % 2 === 0) return whole;
  const kept = whole.observations.flatMap(({ child }, at) => (child === null ? [] : at));
  return {
    ...whole,
    observations: kept.map((at) => whole.observations[at] as Observation),
    truths: kept.map((at) => whole.truths[at] as readonly number[]),
  };
});
const classes = [
  ...small,
  ...WHOLE_CLASS_SEEDS.map((seed) => runClassroom({ seed, ...WHOLE_CLASS })),
];
const parts = new Map<string, WordParts>();
let best = TRACKER_SETTINGS;
let least = lossOf(best);
let step = 0.4;
process.stdout.write(`${least.toFixed(5)} at first\n`);
for (let round = 0; round < ROUNDS; round++, step *= 0.65) {
  for (const name of namesOf(best)) {
    for (const sign of [1, -1]) {
      const next = moved(best, name, sign * step);
      const loss = lossOf(next);
      if (loss >= least) continue;
      best = next;
      least = loss;
      break;
    }
  }
  process.stdout.write(`${least.toFixed(5)} after round ${round + 1}\n`);
}
process.stdout.write(`${JSON.stringify(best, null, 2)}\n`);

function lossOf(settings: TrackerSettings): number {
  return mean(classes.map((one) => lossIn(one, settings)));
}

/** Of forecasts, −ln of the chance given to what happened; of truths, −ln of the density believed. */
function lossIn({ observations, states }: Classroom, settings: TrackerSettings): number {
  const tracker = startTracker(settings, rememberedParts);
  const truths: number[] = [];
  let at = 0;
  const settle = (before: number): void => {
    for (let state = states[at]; state && state.day < before; state = states[++at]) {
      truths.push(lossOfTruth(tracker.known, state));
    }
  };
  const watched: Forecaster = {
    expect: tracker.expect,
    observe(reading) {
      settle(reading.day);
      tracker.observe(reading);
    },
  };
  const loss = logLoss(forecasts(watched, observations));
  settle(Number.POSITIVE_INFINITY);
  return loss + WEIGHT_OF_TRUTH * mean(truths);
}

/** The belief is taken as normal on the scale of log-odds. */
function lossOfTruth(known: Known, { child, card, day, chance }: State): number {
  const { low, high } = estimateCard(known, { of: 'child', id: child }, card, day + 1);
  const [from, to] = [logOdds(low), logOdds(high)];
  const deviation = (to - from) / 2 / 1.6449;
  return ((logOdds(chance) - (from + to) / 2) / deviation) ** 2 / 2 + Math.log(deviation);
}

function rememberedParts(cards: readonly string[]): WordParts {
  const key = cards.join(' ');
  const known = parts.get(key) ?? wordParts(cards);
  parts.set(key, known);
  return known;
}

function namesOf(settings: TrackerSettings): readonly Name[] {
  const names = Object.keys(settings).filter((name) => !SET_BY_HAND.has(name));
  return [...(names as Name[]), 'beginning', 'middle', 'ending'];
}

function moved(settings: TrackerSettings, name: Name, step: number): TrackerSettings {
  const change = (value: number): number =>
    round(shifted.has(name) ? value + step : value * Math.exp(step));
  if (name === 'middle' || name === 'ending' || name === 'beginning') {
    return { ...settings, places: { ...settings.places, [name]: change(settings.places[name]) } };
  }
  return { ...settings, [name]: change(settings[name]) };
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}

function logOdds(chance: number): number {
  return Math.log(chance / (1 - chance));
}
