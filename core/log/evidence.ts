import type { Drill } from '../drills/drill.ts';
import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { DrillRecord, Happening, Mark } from './class-state.ts';
import { planAt } from './drill-record.ts';
import { PARTS, type Part } from './event.ts';
import { isBefore } from './is-before.ts';

/** How one card, sound or word of a drill went. */
export interface Evidence {
  readonly part: Part;
  /** Counted from 0 within the part, in the plan of that time. */
  readonly place: number;
  /** The cards that lay there, by id; in the auditory part, the spellings looked for. */
  readonly cards: readonly CardId[];
  /**
   * `well`: it came up and nothing was marked. `broke`: something was marked.
   * `mended`: something was marked, and it came up again later and went well.
   */
  readonly outcome: 'well' | 'broke' | 'mended';
  /** The child called on last; null when all read together. */
  readonly child: ChildId | null;
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
  const items = itemsIn(record);
  const drafts: Readonly<Record<Part, Draft[]>> = { visual: [], auditory: [], blending: [] };
  for (const one of record.shown) {
    const draft = draftAt(drafts[one.part], items.of(one));
    draft.came = true;
    if (draft.shown === null || isBefore(draft.shown, one)) draft.shown = one;
  }
  for (const one of record.marks) {
    const draft = draftAt(drafts[one.part], items.of(one));
    draft.came = true;
    draft.marks.push(one);
  }
  for (const one of record.calls) draftAt(drafts[one.part], items.of(one)).child = one.child;
  for (const one of record.corrections) draftAt(drafts[one.part], items.of(one)).corrected = true;
  const evidence: Evidence[] = [];
  for (const part of PARTS) {
    drafts[part].forEach((draft, item) => {
      const { came, shown, marks, child, corrected } = draft;
      if (!came) return;
      const place = items.placeOf(item);
      const cards = marks[0]?.cards ?? cardsAt(planAt(record, shown?.at ?? 0), part, place);
      const outcome = outcomeOf(draft);
      evidence.push({ part, place, cards, outcome, child, marks, corrected });
    });
  }
  return evidence;
}

/** Evidence while it is gathered. */
interface Draft {
  came: boolean;
  /** When it came up last; null for never. */
  shown: Happening | null;
  readonly marks: Mark[];
  child: ChildId | null;
  corrected: boolean;
}

/** The draft of an item, which begins here. Places are few and small: a list finds them fastest, and in their order. */
function draftAt(drafts: Draft[], item: number): Draft {
  let draft = drafts[item];
  if (draft === undefined) {
    draft = { came: false, shown: null, marks: [], child: null, corrected: false };
    drafts[item] = draft;
  }
  return draft;
}

/**
 * The cards, sounds and words of a part as numbers, in the order of the plan. A place stands for
 * another one where a change of the plan laid something else there.
 */
function itemsIn({ earlier, drill }: DrillRecord) {
  if (earlier.length === 0) return PLACES_ALONE;
  const most = earlier.length + 1;
  const plans = [...earlier.map((one) => one.drill), drill];
  const differs = (plan: number, { part, place }: Happening) =>
    cardsAt(plans[plan] as Drill, part, place).join() !==
    cardsAt(plans[plan + 1] as Drill, part, place).join();
  const changesAt = new Map<string, readonly number[]>();
  /** When something else was laid at a place; the plans are compared once for each. */
  const changesOf = (one: Happening): readonly number[] => {
    const key = `${one.part} ${one.place}`;
    const known = changesAt.get(key);
    if (known) return known;
    const found = earlier.filter((_, plan) => differs(plan, one)).map(({ until }) => until);
    changesAt.set(key, found);
    return found;
  };
  return {
    of(one: Happening): number {
      return one.place * most + changesOf(one).filter((until) => until <= one.at).length;
    },
    placeOf: (item: number): number => Math.floor(item / most),
  };
}

/** Nearly every drill keeps its plan. */
const PLACES_ALONE = {
  of: ({ place }: Happening): number => place,
  placeOf: (item: number): number => item,
};

function outcomeOf({ marks, shown }: Draft): Evidence['outcome'] {
  const last = marks.at(-1);
  if (last === undefined) return 'well';
  return shown !== null && isBefore(last, shown) ? 'mended' : 'broke';
}

function cardsAt(drill: Drill, part: Part, place: number): readonly CardId[] {
  if (part === 'blending') return drill.run[place]?.cards ?? [];
  if (part === 'auditory') return drill.auditory[place]?.spellings ?? [];
  const card = drill.visual[place];
  return card === undefined ? [] : [card];
}
