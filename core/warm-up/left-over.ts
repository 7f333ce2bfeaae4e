import type { AuditorySound, Drill } from '../drills/drill.ts';
import { sightIn, soundKey } from '../drills/sight.ts';
import { type CardId, isSightId } from '../language/card-id.ts';
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
 * A plan that takes up what was left of another one: its cards, its sounds and its words known by sight
 * come first, as many of each as the plan has, and its words on its own board take the place of the plan's, where any were left.
 */
export function takingUp(plan: Drill, left: Drill, rest: readonly Moment[]): Drill {
  const cards = rest.flatMap((moment) => (moment.part === 'visual' ? [moment.id] : []));
  const sounds = rest.flatMap((moment) => (moment.part === 'auditory' ? [moment.sound] : []));
  const run = rest.flatMap((moment) => (moment.part === 'blending' ? [moment.flip] : []));
  const { score: _, ...others } = plan;
  return {
    ...(run.length > 0 ? { ...others, board: left.board, run, shortfall: null } : plan),
    visual: wordsLast<CardId>(isSightId, (kind) =>
      first(cards.filter(kind), plan.visual.filter(kind), (id) => id),
    ),
    auditory: wordsLast<AuditorySound>(isWord, (kind) =>
      first(sounds.filter(kind), plan.auditory.filter(kind), soundKey),
    ),
  };
}

const isWord = (sound: AuditorySound): boolean => sightIn(sound) !== null;

/** What a part holds: first its cards or sounds, then its words known by sight. */
function wordsLast<Thing>(
  isOne: (thing: Thing) => boolean,
  those: (kind: (thing: Thing) => boolean) => readonly Thing[],
): readonly Thing[] {
  return [...those((thing) => !isOne(thing)), ...those(isOne)];
}

/** What was left, then the plan's own, each once; as many as the plan has, or as were left. */
function first<Thing>(
  left: readonly Thing[],
  plan: readonly Thing[],
  keyOf: (thing: Thing) => string,
): readonly Thing[] {
  const keys = new Set(left.map(keyOf));
  const all = [...left, ...plan.filter((thing) => !keys.has(keyOf(thing)))];
  return all.slice(0, Math.max(plan.length, left.length));
}
