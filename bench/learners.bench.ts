import { suggestGroups } from '../core/groups/suggest-groups.ts';
import { childId, classId, groupId } from '../core/ids.ts';
import type { CardId } from '../core/language/card-id.ts';
import { estimateCard } from '../core/learners/estimate.ts';
import { observationsOf } from '../core/learners/evidence-from-log.ts';
import { type Knowledge, knowledgeFrom } from '../core/learners/knowledge.ts';
import type { Observation } from '../core/learners/observation.ts';
import { planReview } from '../core/learners/review.ts';
import { replay } from '../core/log/replay.ts';
import { makeRandom } from '../core/random.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { classYear } from '../test/class-year.ts';
import { type Measurement, type MeasureSpec, measure, summary } from './measure.ts';

const EVENTS = 60_000;
const CHILDREN = 24;
/** So many different words a year of warm-ups brings. */
const WORDS = 4000;
const GROUP = groupId('group');
const WARM_UPS = 5;
const RUNS = 20;

/**
 * What each child knows: from sixty thousand readings (aim 100 ms), and from a log of as many events
 * (the same aim); and a day's plan from what is known (aim 50 ms). Beside each stands its ratio to a
 * yardstick, taken by turns with it, so that what else the machine does slows both: as many readings
 * counted right and wrong, card by card and child by child, the least that any figure asks for.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const readings = makeReadings();
  const state = replay(classId('bench'), classYear(classId('bench'), EVENTS));
  const knowledge = knowledgeFrom(readings);
  const taught = [...taughtUpTo(SEQUENCE, 60).correspondences];
  const day = (readings.at(-1)?.day ?? 0) + 1;
  const yardstick = await measure({
    name: `yardstick: ${EVENTS} readings counted by child and card`,
    run: () => count(readings),
  });
  const beside = async ({ run, ...spec }: MeasureSpec): Promise<Measurement> => {
    const own: number[] = [];
    const counting: number[] = [];
    for (let turn = 0; turn < WARM_UPS + RUNS; turn++) {
      const times = [await timeOf(run), await timeOf(() => count(readings))] as const;
      if (turn < WARM_UPS) continue;
      own.push(times[0]);
      counting.push(times[1]);
    }
    const measured = summary({ ...spec, unit: 'ms', values: own });
    const counted = summary({ name: '', unit: 'ms', values: counting });
    const ratio = (measured.median / counted.median).toFixed(2);
    return { ...measured, name: `${measured.name} (${ratio} yardsticks)` };
  };
  return [
    yardstick,
    await beside({
      name: `what is known from ${EVENTS} readings`,
      aim: 100,
      run: () => knowledgeFrom(readings).read.fit(),
    }),
    await beside({
      name: `what is known from a log of ${EVENTS} events`,
      aim: 100,
      run: () => knowledgeFrom(observationsOf(state)).read.fit(),
    }),
    await beside({
      name: `all intervals of ${CHILDREN} children by ${taught.length} cards`,
      run: () => allIntervals(knowledge, taught, day),
    }),
    await beside({
      name: `a day’s plan, ${taught.length} cards taught, ${EVENTS} readings known`,
      aim: 50,
      run: () =>
        planReview({
          observations: readings,
          knowledge,
          group: GROUP,
          taught,
          newest: taught.slice(-2),
          day,
        }),
    }),
    await beside({
      name: `groups of ${CHILDREN} children by ${taught.length} cards`,
      run: () => suggestGroups(chances(taught), [6, 6, 6, 6]),
    }),
  ];
}

async function timeOf(run: () => unknown): Promise<number> {
  return (await measure({ name: '', run, warmUps: 0, runs: 1 })).median;
}

/** A year of readings of words of three cards, half of them alone, one in eight wrong. */
function makeReadings(): readonly Observation[] {
  const random = makeRandom(7);
  const ids = [...taughtUpTo(SEQUENCE, 60).correspondences];
  const words = Array.from({ length: WORDS }, () =>
    [0, 1, 2].map(() => ids[random.below(ids.length)] as CardId),
  );
  return Array.from({ length: EVENTS }, (_, n) => {
    const right = random.below(8) > 0;
    const named = random.below(5) > 0;
    return {
      day: Math.floor(n / 330),
      child: random.below(2) === 0 ? null : childId(`child ${random.below(CHILDREN)}`),
      groups: [GROUP],
      task: 'read',
      cards: words[random.below(words.length)] as readonly CardId[],
      right,
      broke: right || !named ? null : 1 + random.below(3),
      heard: null,
    };
  });
}

/** The sum of the widths of every child's interval of every card. */
function allIntervals({ read }: Knowledge, cards: readonly CardId[], day: number): number {
  let sum = 0;
  for (let n = 0; n < CHILDREN; n++) {
    for (const card of cards) {
      const { low, high } = estimateCard(
        read,
        { of: 'child', id: childId(`child ${n}`) },
        card,
        day,
      );
      sum += high - low;
    }
  }
  return sum;
}

function chances(cards: readonly CardId[]) {
  const random = makeRandom(9);
  return Array.from({ length: CHILDREN }, (_, n) => ({
    id: childId(`child ${n}`),
    chances: new Map(cards.map((card) => [card, random.fraction()])),
  }));
}

function count(readings: readonly Observation[]): number {
  const counts = new Map<string, number>();
  for (const { child, cards, right } of readings) {
    for (const card of cards) {
      const key = `${child} ${card}`;
      counts.set(key, (counts.get(key) ?? 0) + (right ? 1 : 0));
    }
  }
  return counts.size;
}
