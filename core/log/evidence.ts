import type { Drill } from '../drills/drill.ts';
import type { DrillRecord, Happening, Mark } from './class-state.ts';
import { planAt } from './drill-record.ts';
import { PARTS, type Part } from './event.ts';

/** How one card, sound or word of a drill went. */
export interface Evidence {
  readonly part: Part;
  /** Counted from 0 within the part, in the plan of that time. */
  readonly place: number;
  /** The cards that lay there, by id; in the auditory part, the spellings looked for. */
  readonly cards: readonly string[];
  /**
   * `well`: it came up and nothing was marked. `broke`: something was marked.
   * `mended`: something was marked, and it came up again later and went well.
   */
  readonly outcome: 'well' | 'broke' | 'mended';
  /** The child called on last; null when all read together. */
  readonly child: string | null;
  /** What broke, oldest first. */
  readonly marks: readonly Mark[];
  /** Whether it was corrected: my turn, our turn, your turn. */
  readonly corrected: boolean;
}

/**
 * What a drill has shown: each card, sound and word that came up, in the order
 * of the plan. What was not reached is not in it and says nothing.
 */
export function evidenceOf(record: DrillRecord): readonly Evidence[] {
  return PARTS.flatMap((part) => evidenceIn(record, part));
}

function evidenceIn(record: DrillRecord, part: Part): readonly Evidence[] {
  const items = itemsIn(record, part);
  const lastShown = new Map<number, number>();
  const marks = new Map<number, Mark[]>();
  const called = new Map<number, string | null>();
  const corrected = new Set<number>();
  for (const one of record.shown) if (one.part === part) lastShown.set(items.of(one), one.at);
  for (const one of record.marks) {
    if (one.part !== part) continue;
    const here = marks.get(items.of(one));
    if (here) here.push(one);
    else marks.set(items.of(one), [one]);
  }
  for (const one of record.calls) if (one.part === part) called.set(items.of(one), one.child);
  for (const one of record.corrections) if (one.part === part) corrected.add(items.of(one));
  return [...new Set([...lastShown.keys(), ...marks.keys()])]
    .sort((left, right) => left - right)
    .map((item): Evidence => {
      const marked = marks.get(item) ?? [];
      const shown = lastShown.get(item) ?? 0;
      const place = items.placeOf(item);
      return {
        part,
        place,
        cards: marked[0]?.cards ?? cardsAt(planAt(record, shown), part, place),
        outcome: outcomeOf(marked, shown),
        child: called.get(item) ?? null,
        marks: marked,
        corrected: corrected.has(item),
      };
    });
}

/**
 * The cards, sounds and words of a part as numbers, in the order of the plan. A place stands for
 * another one where a change of the plan laid something else there.
 */
function itemsIn({ earlier, drill }: DrillRecord, part: Part) {
  if (earlier.length === 0) return PLACES_ALONE;
  const most = earlier.length + 1;
  const plans = [...earlier.map((one) => one.drill), drill];
  const differs = (plan: number, place: number) =>
    cardsAt(plans[plan] as Drill, part, place).join() !==
    cardsAt(plans[plan + 1] as Drill, part, place).join();
  return {
    of({ place, at }: Happening): number {
      const changes = earlier.filter(({ until }, plan) => until <= at && differs(plan, place));
      return place * most + changes.length;
    },
    placeOf: (item: number): number => Math.floor(item / most),
  };
}

/** Nearly every drill keeps its plan. */
const PLACES_ALONE = {
  of: ({ place }: Happening): number => place,
  placeOf: (item: number): number => item,
};

function outcomeOf(marks: readonly Mark[], lastShown: number): Evidence['outcome'] {
  const last = marks.at(-1);
  if (last === undefined) return 'well';
  return last.at < lastShown ? 'mended' : 'broke';
}

function cardsAt(drill: Drill, part: Part, place: number): readonly string[] {
  if (part === 'blending') return drill.run[place]?.cards ?? [];
  if (part === 'auditory') return drill.auditory[place]?.spellings ?? [];
  const card = drill.visual[place];
  return card === undefined ? [] : [card];
}
