import { computed } from '@preact/signals';
import {
  array,
  boolean,
  custom,
  type InferOutput,
  maxValue,
  minValue,
  nullable,
  number,
  object,
  optional,
  picklist,
  pipe,
  record,
  string,
} from 'valibot';
import { AIMS } from '../../core/boards/search/aims.ts';
import { buildDrill } from '../../core/drills/build-drill.ts';
import { pairsAmong } from '../../core/drills/contrasts.ts';
import type { Drill } from '../../core/drills/drill.ts';
import { DRILL_DEFAULTS } from '../../core/drills/drill-spec.ts';
import { mendRun } from '../../core/drills/mend-run.ts';
import { ownFlip, withFlip } from '../../core/drills/own-flip.ts';
import type { CardId } from '../../core/language/card-id.ts';
import type { Taught } from '../../core/language/taught.ts';
import { isCards } from '../../core/log/is-card.ts';
import { isDrill } from '../../core/log/is-drill.ts';
import { drillsOf, recentWords } from '../../core/log/recent.ts';
import { remembered } from '../device/remembered.ts';
import { brokenLately, practiced } from './broken-lately.ts';
import { classWordsKey } from './class-words.ts';
import { today } from './day.ts';
import type { Engine } from './engine.ts';
import { readyEngine } from './engine-ready.ts';
import { newestCards, newestSight } from './newest-cards.ts';
import { classState, group, groupKey } from './open-class.ts';
import { pins } from './pins.ts';
import { progress, taught } from './progress.ts';
import { reviewedParts } from './review.ts';
import { change } from './undo.ts';

/** A few words at a time (common practice, no source); none until one was taught. */
const SIGHT = { shown: 4, said: 2 } as const;

/** Whether it is two or three cards. */
const isSideBySide = (value: unknown): boolean =>
  isCards(value) && (value.length === 2 || value.length === 3);

const wishesSchema = object({
  flips: pipe(number(), minValue(5), maxValue(60)),
  /** Share of real words among the flips, 0 to 1. */
  realShare: pipe(number(), minValue(0), maxValue(1)),
  /** Share of the flips with a card to practice, 0 to 1; null: as it comes. */
  focusShare: optional(nullable(pipe(number(), minValue(0), maxValue(1))), null),
  /** Two or three cards to be turned one into the other, by id. */
  contrast: optional(nullable(custom<readonly CardId[]>(isSideBySide)), null),
  /** Easier words first. */
  rise: optional(boolean(), false),
  /** What the board and its run are best for. */
  aim: optional(picklist(AIMS), 'today'),
  /** How many cards are shown, and how many sounds said. */
  visualCount: optional(pipe(number(), minValue(0), maxValue(24)), DRILL_DEFAULTS.visualCount),
  auditoryCount: optional(pipe(number(), minValue(0), maxValue(12)), DRILL_DEFAULTS.auditoryCount),
  /** How many words known by sight are shown, and how many said to be spelled (common practice, no source). */
  sightCount: optional(pipe(number(), minValue(0), maxValue(24)), SIGHT.shown),
  sightSaidCount: optional(pipe(number(), minValue(0), maxValue(12)), SIGHT.said),
});

/** A plan, for whom, and what had been taught and decided about words when it was made. */
const madeSchema = object({
  group: optional(string(), ''),
  taught: string(),
  classWords: optional(string(), ''),
  drill: custom<Drill>(isDrill),
});

const schema = object({
  wishes: wishesSchema,
  /** The plan made last; null when there is none yet. */
  made: nullable(madeSchema),
  /** The plans of other groups. */
  others: optional(array(madeSchema), []),
  /** Her wishes for each group that she has planned for, by the group's key; `wishes` are those of the last. */
  wishesOf: optional(record(string(), wishesSchema), {}),
});

/** What she wishes of a warm-up. */
export type Wishes = InferOutput<typeof wishesSchema>;

const plan = remembered('plan', schema, {
  wishes: {
    ...{ flips: 30, realShare: 0.5, focusShare: null, contrast: null, rise: false },
    aim: 'today',
    ...{ visualCount: DRILL_DEFAULTS.visualCount, auditoryCount: DRILL_DEFAULTS.auditoryCount },
    ...{ sightCount: SIGHT.shown, sightSaidCount: SIGHT.said },
  },
  made: null,
  others: [],
  wishesOf: {},
});

/** What she wishes of the group's warm-up, remembered from day to day; for a new group, what she wished last. */
export const wishes = computed(() => plan.value.wishesOf[groupKey.value] ?? plan.value.wishes);

/**
 * Today's warm-up for what is taught now; null until it was made. Where she has
 * decided about words since, the flips that are not fit any more are replaced.
 */
export const drill = computed<Drill | null>(() => {
  const made = madeFor(groupKey.value, plan.value);
  if (made?.taught !== taughtKey(taught.value) || wasRunBefore(made.drill)) return null;
  if (made.classWords === classWordsKey.value) return made.drill;
  const ready = readyEngine();
  return ready ? mendRun(made.drill, taught.value, ready) : null;
});

/** The plan of a group; one that was made before there were groups is anyone's. */
function madeFor(key: string, { made, others }: InferOutput<typeof schema>) {
  return made && (made.group === key || made.group === '')
    ? made
    : others.find((other) => other.group === key);
}

/** Whether a plan was run on an earlier day: then today wants a new one. */
function wasRunBefore({ seed }: Drill): boolean {
  const now = today();
  return drillsOf(classState.value, group.value.id).some(
    (record) => record.drill.seed === seed && record.day < now && record.shown.length > 0,
  );
}

/**
 * Makes a warm-up when there is none for what is taught now. `seed` is drawn by
 * the caller. Nothing can be undone here: nothing of hers is replaced.
 */
export function ensureDrill(seed: number): void {
  const ready = readyEngine();
  if (!ready || drill.value !== null) return;
  const wished = wishes.peek();
  plan.value = planned(wished, begunWithoutPlan() ?? built(ready, wished, seed));
}

/**
 * What was begun today and not ended, where its plan is gone: a browser that is
 * killed may lose the last seconds of its shelf, and the log remembers.
 */
function begunWithoutPlan(): Drill | null {
  if (madeFor(groupKey.peek(), plan.peek())) return null;
  const last = drillsOf(classState.peek(), group.peek().id).at(-1);
  return last && last.ended === null && last.day === today() ? last.drill : null;
}

/** Makes the warm-up again, with other wishes or another seed; can be undone. */
export function remakeDrill(next: Wishes, seed: number, said: string): void {
  const ready = readyEngine();
  if (!ready) return;
  change(plan, planned(next, built(ready, next, seed)), said);
}

/** Puts a changed warm-up in the place of today's, made with these wishes; can be undone. */
export function setDrill(next: Drill, said: string, asked: Wishes = wishes.peek()): void {
  change(plan, planned(asked, next), said);
}

/** A seed from the browser's own chance. */
export function freshSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
}

/** What her wishes ask of a run, whichever board it is on. */
export function runOf({ flips, realShare, focusShare, contrast, rise, aim }: Wishes) {
  const focus = practiced(brokenLately.peek());
  return {
    flips,
    realShare,
    rise,
    aim,
    newest: newestCards(progress.peek()),
    focus: focusShare === null ? focus : [...newestCards(progress.peek()), ...focus],
    ...(focusShare === null ? {} : { focusShare }),
    ...(contrast === null ? {} : { contrasts: pairsAmong(contrast) }),
  };
}

/** A new drill, with the words in its run that she wants there every day, as far as its board holds them. */
function built(ready: Engine, wishes: Wishes, seed: number): Drill {
  let made = buildDrill(specOf(wishes, seed), ready);
  for (const word of pins.peek().words) {
    const own = ownFlip(word, made, { taught: taught.peek(), ...ready });
    if (own.kind === 'laid') made = { ...made, run: withFlip(made.run, own.flip) };
  }
  return made;
}

function specOf(wishes: Wishes, seed: number) {
  const here = progress.peek();
  const newest = [...newestCards(here), ...newestSight(here)];
  const avoid = recentWords(classState.peek(), group.peek().id);
  const parts = reviewedParts();
  return {
    taught: taught.peek(),
    seed,
    avoid,
    visualCount: wishes.visualCount,
    auditoryCount: wishes.auditoryCount,
    sightCount: wishes.sightCount,
    sightSaidCount: wishes.sightSaidCount,
    ...runOf(wishes),
    newest,
    pinned: pins.peek(),
    ...(parts ? { parts } : {}),
  };
}

function planned(wishes: Wishes, drill: Drill): InferOutput<typeof schema> {
  const { made, others, wishesOf } = plan.peek();
  const next = marked(drill);
  const kept = made && made.group !== next.group && made.group !== '' ? [made, ...others] : others;
  return {
    wishes,
    made: next,
    others: kept.filter((other) => other.group !== next.group).slice(0, mostOthers),
    wishesOf: { ...wishesOf, [next.group]: wishes },
  };
}

/** Plans of so many other groups are kept. */
const mostOthers = 30;

function marked(drill: Drill) {
  return {
    group: groupKey.peek(),
    taught: taughtKey(taught.peek()),
    classWords: classWordsKey.peek(),
    drill,
  };
}

/** Equal for equal taught sets. */
export function taughtKey({ correspondences, habits, irregularWords }: Taught): string {
  return [correspondences, habits, irregularWords]
    .map((set) => [...set].sort().join(' '))
    .join('|');
}
