import type { Drill } from '../drills/drill.ts';
import type { DrillRecord } from '../log/class-state.ts';
import { type Moment, momentsOf } from './moments.ts';
import { momentAt, type Standing } from './standing.ts';
import { takenUpAt } from './taken-up.ts';

/** Where a warm-up that was left stands, and what is still to come, each moment once. */
export interface LeftOver {
  readonly standing: Standing;
  /** The moment that was up when it was left; undefined at the end. */
  readonly up: Moment | undefined;
  /** What was up, and all after it that has not been read. */
  readonly rest: readonly Moment[];
}

/** What was left of a warm-up. What was skipped is not left: she did not want it. */
export function leftOver(record: DrillRecord): LeftOver {
  const moments = momentsOf(record.drill);
  const standing = takenUpAt(record, moments);
  const { order, at } = standing;
  const numbers = [...new Set(order.slice(at))];
  return {
    standing,
    up: momentAt(standing, moments),
    rest: numbers.flatMap((number) => moments[number] ?? []),
  };
}

/**
 * A plan that takes up what was left of another one: its cards and sounds come first, as many as
 * the plan has, and its words on its own board take the place of the plan's, where any were left.
 */
export function takingUp(plan: Drill, left: Drill, rest: readonly Moment[]): Drill {
  const cards = rest.flatMap((moment) => (moment.part === 'visual' ? [moment.id] : []));
  const sounds = rest.flatMap((moment) => (moment.part === 'auditory' ? [moment.sound] : []));
  const run = rest.flatMap((moment) => (moment.part === 'blending' ? [moment.flip] : []));
  const soundKeys = new Set(sounds.map(({ phonemes }) => phonemes.join(' ')));
  const visual = [...cards, ...plan.visual.filter((id) => !cards.includes(id))];
  const auditory = [
    ...sounds,
    ...plan.auditory.filter(({ phonemes }) => !soundKeys.has(phonemes.join(' '))),
  ];
  const { score: _, ...others } = plan;
  return {
    ...(run.length > 0 ? { ...others, board: left.board, run, shortfall: null } : plan),
    visual: visual.slice(0, Math.max(plan.visual.length, cards.length)),
    auditory: auditory.slice(0, Math.max(plan.auditory.length, sounds.length)),
  };
}
