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
  const { shown, marks, calls, corrections } = record;
  return PARTS.flatMap((part) => {
    const here = <Moment extends { readonly part: Part }>(list: readonly Moment[]) =>
      list.filter((one) => one.part === part);
    const [seen, broken, called, mended] = [
      here(shown),
      here(marks),
      here(calls),
      here(corrections),
    ];
    const places = new Set([...seen, ...broken].map(({ place }) => place));
    return [...places]
      .sort((left, right) => left - right)
      .map((place): Evidence => {
        const isHere = (one: { readonly place: number }): boolean => one.place === place;
        const marked = broken.filter(isHere);
        return {
          part,
          place,
          cards: marked[0]?.cards ?? cardsAt(record, part, place),
          outcome: outcomeOf(marked, seen.findLast(isHere)?.at ?? 0),
          child: called.findLast(isHere)?.child ?? null,
          marks: marked,
          corrected: mended.some(isHere),
        };
      });
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
