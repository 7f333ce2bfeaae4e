/**
 * Prints the tables of docs/mastery.md: the model of what is known, beside its rivals, in every world of
 * the family; how intervals hold where only mistakes are marked; and how much more pupils know for being
 * taught by plan. Takes some minutes.
 */
import { runClassroom } from '../test/classroom/classroom.ts';
import { comparedCards, comparedCounts, judgeIntervals } from '../test/classroom/intervals.ts';
import { mean } from '../test/classroom/judge.ts';
import { classesOf, judgeWorld, RIVALS } from '../test/classroom/judge-world.ts';
import { planned } from '../test/classroom/planned.ts';
import { JUDGING_SEEDS } from '../test/classroom/seeds.ts';
import { MISTAKES_ONLY, WORLDS } from '../test/classroom/worlds.ts';

const PLANNED = 20;

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
for (const world of WORLDS) {
  const one = judgeWorld(world, JUDGING_SEEDS);
  const counts = judgeIntervals(comparedCounts(classesOf(world, JUDGING_SEEDS)));
  const { intervals, afterBreak } = one;
  print(
    world.late ? `${one.name} *` : one.name,
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

function percent(share: number): string {
  return `${(share * 100).toFixed(1)}%`;
}

function print(...cells: readonly string[]): void {
  process.stdout.write(`| ${cells.join(' | ')} |\n`);
}
