import { commonnessIn } from '../../../core/drills/commonness.ts';
import type { MapRow } from '../../../core/facts/class-map.ts';
import type { ChildBeliefs } from '../../../core/groups/gap-draws.ts';
import { type GroupNeed, needsOf } from '../../../core/groups/needs.ts';
import type { WhoChild } from '../../../core/learners/estimate.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { mapFor, taughtToChild } from '../../state/class-now.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { thresholds } from '../../state/thresholds.ts';

/**
 * These children's rows of the class map, of the cards that one of them at least was taught and one
 * at least has read alone: of a sound that nobody read nothing is known yet that could part them.
 */
export function rowsOf(all: readonly Child[]): readonly MapRow<WhoChild>[] {
  const taught = [...new Set(all.flatMap(taughtToChild))];
  const rows = mapFor(
    all.map(({ id }) => ({ of: 'child', id })),
    taught,
  );
  const isSeen = taught.map((_, at) =>
    rows.some(({ cells }) => cells[at]?.word !== 'not yet seen'),
  );
  return rows.map(({ who, cells }) => ({ who, cells: cells.filter((_, at) => isSeen[at]) }));
}

/** What is believed of each child, of the sounds that it was taught itself. */
export function beliefsOf(all: readonly Child[]): readonly ChildBeliefs[] {
  return rowsOf(all).map(({ cells }, at) => {
    const child = all[at] as Child;
    const taught = new Set(taughtToChild(child));
    const own = cells.filter(({ card }) => taught.has(card));
    return { id: child.id, cards: new Map(own.map(({ card, estimate }) => [card, estimate])) };
  });
}

/** What these children need next, by what was seen of them. */
export function needsFor(rows: readonly MapRow<WhoChild>[]): readonly GroupNeed[] {
  const engine = readyEngine();
  const weight = engine === null ? undefined : commonnessIn(engine.lexicon);
  return needsOf(rows, thresholds.value.secure, weight);
}
