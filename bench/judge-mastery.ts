/**
 * Prints the tables of docs/mastery.md: the model of what is known, beside its rivals, in every world of
 * the family; how intervals hold where only mistakes are marked; how far the fit is from an exact sampler;
 * and how much more pupils know for being taught by plan. Takes some minutes.
 */
import { knowledgeFrom } from '../core/learners/knowledge.ts';
import { runClassroom } from '../test/classroom/classroom.ts';
import { bothWays } from '../test/classroom/exact-posterior.ts';
import { comparedCards, comparedCounts, judgeIntervals } from '../test/classroom/intervals.ts';
import { mean } from '../test/classroom/judge.ts';
import { classesOf, judgeWorld, RIVALS } from '../test/classroom/judge-world.ts';
import { planned, plannedWithoutNeed, plannedWithoutNew } from '../test/classroom/planned.ts';
import { JUDGING_SEEDS } from '../test/classroom/seeds.ts';
import { crossed } from '../test/classroom/truths/crossed.ts';
import { traces } from '../test/classroom/truths/traces.ts';
import { MISTAKES_ONLY, UNTOUCHED, WORLDS } from '../test/classroom/worlds.ts';

const PLANNED = 20;
const PARTED = 8;
const EXACT_SEEDS = [6001, 6002, 6003, 6004, 6005, 6006];

print(
  'world',
  'ours',
  ...RIVALS,
  'truth',
  'ECE',
  'inside',
  'above',
  'below',
  'inside, over 95%',
  'width',
  'after weeks off',
  'counts inside',
);
print(...Array.from({ length: 11 + RIVALS.length }, () => '---'));
for (const world of [...WORLDS, ...UNTOUCHED]) {
  const one = judgeWorld(world, JUDGING_SEEDS);
  const counts = judgeIntervals(comparedCounts(classesOf(world, JUDGING_SEEDS)));
  const { intervals, afterBreak } = one;
  print(
    UNTOUCHED.includes(world) ? `${one.name} †` : world.late ? `${one.name} *` : one.name,
    `**${one.ours.toFixed(4)}**`,
    ...RIVALS.map((rival) => one.rivals[rival].toFixed(4)),
    one.truth.toFixed(4),
    one.calibration.toFixed(3),
    percent(intervals.inside),
    percent(intervals.above),
    percent(intervals.below),
    intervals.countHigh < 100 ? '–' : percent(intervals.insideHigh),
    intervals.width.toFixed(2),
    percent(afterBreak.inside),
    percent(counts.inside),
  );
}

process.stdout.write('\n');
for (const world of MISTAKES_ONLY) {
  const compared = comparedCards(classesOf(world, JUDGING_SEEDS));
  const { inside, width } = judgeIntervals(compared.filter(({ afterBreak }) => !afterBreak));
  print(world.name, percent(inside), width.toFixed(2));
}

print('pairs differ by', 'pairs', 'mean off', 'ends off', 'width fitted', 'width exact');
for (const pair of [0, 0.8, 1.6]) {
  const all = EXACT_SEEDS.flatMap((seed) => {
    const spec = { seed, truth: crossed({ pair }), pupils: 4, weeks: 2 };
    return bothWays(knowledgeFrom(runClassroom(spec).observations).read, 20_000, seed);
  });
  const off = (at: 0 | 1 | 2) => all.map(({ fitted, exact }) => Math.abs(fitted[at] - exact[at]));
  const said = (values: readonly number[]) =>
    `${mean(values).toFixed(4)}, at most ${Math.max(...values).toFixed(3)}`;
  const width = (way: 'fitted' | 'exact') =>
    mean(all.map((one) => one[way][2] - one[way][1])).toFixed(3);
  const ends = [...off(1), ...off(2)];
  print(`${pair}`, `${all.length}`, said(off(0)), said(ends), width('fitted'), width('exact'));
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

print('planned − by chance', 'the plan', 'without need', 'without what is new first');
for (const [name, truth] of [
  ['usual', traces()],
  ['sharp threshold', traces({ noise: 0.12 })],
  ['fast fading', traces({ fading: 0.65 })],
] as const) {
  const seeds = Array.from({ length: PARTED }, (_, n) => 201 + n);
  const known = (plan?: typeof planned) =>
    mean(seeds.map((seed) => runClassroom({ seed, truth, ...(plan && { plan }) }).knownAtEnd));
  const chance = known();
  const plans = [planned, plannedWithoutNeed, plannedWithoutNew];
  print(name, ...plans.map((plan) => (known(plan) - chance).toFixed(4)));
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)}%`;
}

function print(...cells: readonly string[]): void {
  process.stdout.write(`| ${cells.join(' | ')} |\n`);
}
