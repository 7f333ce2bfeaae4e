import type { DrillRecord, Mark } from './class-state.ts';
import { PARTS, type Part } from './event.ts';

/** How one card, sound or word of a drill went. */
export interface Evidence {
  readonly part: Part;
  /** Counted from 0 within the part. */
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
  const lastShown = new Map<number, number>();
  const marks = new Map<number, Mark[]>();
  const called = new Map<number, string | null>();
  const corrected = new Set<number>();
  for (const one of record.shown) if (one.part === part) lastShown.set(one.place, one.at);
  for (const one of record.marks) {
    if (one.part !== part) continue;
    const here = marks.get(one.place);
    if (here) here.push(one);
    else marks.set(one.place, [one]);
  }
  for (const one of record.calls) if (one.part === part) called.set(one.place, one.child);
  for (const one of record.corrections) if (one.part === part) corrected.add(one.place);
  const places = new Set([...lastShown.keys(), ...marks.keys()]);
  return [...places]
    .sort((left, right) => left - right)
    .map((place): Evidence => {
      const marked = marks.get(place) ?? [];
      return {
        part,
        place,
        cards: marked[0]?.cards ?? cardsAt(record, part, place),
        outcome: outcomeOf(marked, lastShown.get(place) ?? 0),
        child: called.get(place) ?? null,
        marks: marked,
        corrected: corrected.has(place),
      };
    });
}

function outcomeOf(marks: readonly Mark[], lastShown: number): Evidence['outcome'] {
  const last = marks.at(-1);
  if (last === undefined) return 'well';
  return last.at < lastShown ? 'mended' : 'broke';
}

function cardsAt({ drill }: DrillRecord, part: Part, place: number): readonly string[] {
  if (part === 'blending') return drill.run[place]?.cards ?? [];
  if (part === 'auditory') return drill.auditory[place]?.spellings ?? [];
  const card = drill.visual[place];
  return card === undefined ? [] : [card];
}
