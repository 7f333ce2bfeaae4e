/**
 * Prints how suggested groups stay over weeks, for docs/mastery.md: of invented classes of 24, taught for
 * eight weeks, the share of children that change group from one week to the next, and what share of the
 * true differences lies between the groups at the end. Groups that are kept, suggested from scratch each week, and
 * cut by level.
 */
import { coverOf, cutByLevel, type Numbers } from '../core/groups/cover.ts';
import { type ChildBeliefs, expectedGaps } from '../core/groups/gap-draws.ts';
import { keepGroups } from '../core/groups/keep-groups.ts';
import { suggestGroups } from '../core/groups/suggest-groups.ts';
import { type ChildId, childId } from '../core/ids.ts';
import type { CardId } from '../core/language/card-id.ts';
import { estimateCard } from '../core/learners/estimate.ts';
import { knowledgeFrom } from '../core/learners/knowledge.ts';
import { makeRandom } from '../core/random.ts';
import { type Classroom, runClassroom } from '../test/classroom/classroom.ts';
import { mean } from '../test/classroom/judge.ts';
import { crossed } from '../test/classroom/truths/crossed.ts';
import { curves } from '../test/classroom/truths/curves.ts';
import { traces } from '../test/classroom/truths/traces.ts';

const SEEDS = [8101, 8102, 8103];
const SIZES = [6, 6, 6, 6];
const CHILDREN = Array.from({ length: 24 }, (_, at) => childId(`p${at}`));
/** Before the third week too little was read to group by. */
const FIRST_WEEK = 2;
const WEEKS = 8;

const TRUTHS = {
  'traces that fade': traces(),
  'still, pairs differ by 0.8': crossed({ pair: 0.8 }),
  'learning curves': curves({ rate: 0.08 }),
};

process.stdout.write('| world | way | change group in a week | true differences covered |\n');
for (const [name, truth] of Object.entries(TRUTHS)) {
  const classes = SEEDS.map((seed) =>
    runClassroom({ seed, truth, pupils: CHILDREN.length, weeks: WEEKS }),
  );
  for (const [way, groupsOf] of Object.entries({ kept, anew, 'by level': byLevel })) {
    const all = classes.map((classroom) => follow(classroom, groupsOf));
    const changes = percent(mean(all.map(({ changed }) => changed)));
    const covered = percent(mean(all.map(({ covered }) => covered)));
    process.stdout.write(`| ${name} | ${way} | ${changes} | ${covered} |\n`);
  }
}

type Way = (children: readonly ChildBeliefs[], before: Numbers, week: number) => Numbers;

function kept(children: readonly ChildBeliefs[], before: Numbers, week: number): Numbers {
  const today = before.map((group) => group.map((at) => CHILDREN[at] as ChildId));
  const found = keepGroups({ children, today, sizes: SIZES, random: makeRandom(week) });
  if ('error' in found) throw new Error(found.error.message);
  return numbered(found.groups);
}

function anew(children: readonly ChildBeliefs[]): Numbers {
  const chances = children.map(({ id, cards }) => ({
    id,
    chances: new Map([...cards].map(([card, { p }]) => [card, p])),
  }));
  const found = suggestGroups(chances, SIZES);
  if ('error' in found) throw new Error(found.error.message);
  return numbered(found.groups);
}

function byLevel(children: readonly ChildBeliefs[]): Numbers {
  return cutByLevel(expectedGaps(children, [...(children[0]?.cards.keys() ?? [])]), SIZES);
}

function numbered(groups: readonly (readonly ChildId[])[]): Numbers {
  return groups.map((ids) => ids.map((id) => CHILDREN.indexOf(id)));
}

/** Groups at the end of each week: how many change, on average, and what the last ones cover in truth. */
function follow({ observations, states }: Classroom, groupsOf: Way) {
  const days = [...new Set(observations.map(({ day }) => day))];
  let before: Numbers = [];
  const changes: number[] = [];
  for (let week = FIRST_WEEK; week < WEEKS; week++) {
    const day = days[5 * week + 4] as number;
    const so = observations.filter((one) => one.day <= day);
    const cards = [...new Set(so.flatMap((one) => one.cards))];
    const { read } = knowledgeFrom(so);
    const beliefs = CHILDREN.map((id) => ({
      id,
      cards: new Map(
        cards.map((card) => [card, estimateCard(read, { of: 'child', id }, card, day)] as const),
      ),
    }));
    const now = groupsOf(beliefs, before, week);
    if (before.length > 0) changes.push(changedShare(before, now));
    before = now;
  }
  const end = days.at(-1) as number;
  const last = states.filter(({ day }) => day === end);
  const cards = [...new Set(last.map(({ card }) => card))] as readonly CardId[];
  const truth = CHILDREN.map((id) => {
    const own = new Map(
      last.filter(({ child }) => child === id).map(({ card, chance }) => [card, 1 - chance]),
    );
    return Float64Array.from(cards, (card) => own.get(card) ?? 0);
  });
  return { changed: mean(changes), covered: coverOf(before, [truth]) };
}

/** The share of children whose group is not the one that it goes on as: groups are matched by who stays, the largest first. */
function changedShare(before: Numbers, now: Numbers): number {
  const shared = before
    .flatMap((group, from) =>
      now.map((other, to) => ({
        from,
        to,
        count: group.filter((child) => other.includes(child)).length,
      })),
    )
    .sort((one, other) => other.count - one.count);
  const taken = { from: new Set<number>(), to: new Set<number>() };
  let stay = 0;
  for (const { from, to, count } of shared) {
    if (taken.from.has(from) || taken.to.has(to)) continue;
    taken.from.add(from);
    taken.to.add(to);
    stay += count;
  }
  return 1 - stay / CHILDREN.length;
}

function percent(share: number): string {
  return `${Math.round(share * 100)}%`;
}
