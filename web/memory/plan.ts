import { computed } from '@preact/signals';
import {
  array,
  type InferOutput,
  maxValue,
  minValue,
  nullable,
  number,
  object,
  optional,
  picklist,
  pipe,
  string,
} from 'valibot';
import { readyEngine } from '../app/engine-ready.ts';
import { type Drill, PHONEMES, type Taught } from '../engine.ts';
import { classWordsKey } from './class-words.ts';
import { newestCards } from './newest-cards.ts';
import { progress, taught } from './progress.ts';
import { remembered } from './remembered.ts';
import { change } from './undo.ts';

const wishesSchema = object({
  flips: pipe(number(), minValue(5), maxValue(60)),
  /** Share of real words among the flips, 0 to 1. */
  realShare: pipe(number(), minValue(0), maxValue(1)),
});

const phonemes = array(picklist(PHONEMES));

const drillSchema = object({
  seed: number(),
  visual: array(string()),
  auditory: array(object({ phonemes, spellings: array(string()) })),
  board: object({ shape: string(), piles: array(array(string())) }),
  run: array(
    object({
      cards: array(string()),
      word: string(),
      sounds: phonemes,
      kind: picklist(['real', 'nonsense']),
    }),
  ),
  shortfall: nullable(
    object({ code: picklist(['no-vowel', 'few-letters', 'few-words']), message: string() }),
  ),
});

const schema = object({
  wishes: wishesSchema,
  /**
   * Today's plan, and what had been taught and decided about words when it was
   * made; null when there is none yet.
   */
  made: nullable(
    object({ taught: string(), classWords: optional(string(), ''), drill: drillSchema }),
  ),
});

/** What she wishes of a warm-up. */
export type Wishes = InferOutput<typeof wishesSchema>;

const plan = remembered('plan', schema, { wishes: { flips: 30, realShare: 0.5 }, made: null });

/** What she wishes of a warm-up, remembered from day to day. */
export const wishes = computed(() => plan.value.wishes);

/**
 * Today's warm-up for what is taught now; null until it was made. Where she has
 * decided about words since, the flips that are not fit any more are replaced.
 */
export const drill = computed<Drill | null>(() => {
  const { made } = plan.value;
  if (made?.taught !== taughtKey(taught.value)) return null;
  if (made.classWords === classWordsKey.value) return made.drill;
  return readyEngine()?.mend(made.drill, taught.value) ?? null;
});

/**
 * Makes a warm-up when there is none for what is taught now. `seed` is drawn by
 * the caller. Nothing can be undone here: nothing of hers is replaced.
 */
export function ensureDrill(seed: number): void {
  const ready = readyEngine();
  if (!ready || drill.value !== null) return;
  plan.value = planned(plan.peek().wishes, ready.build(specOf(plan.peek().wishes, seed)));
}

/** Makes the warm-up anew, with other wishes or another seed; can be undone. */
export function remakeDrill(next: Wishes, seed: number, said: string): void {
  const ready = readyEngine();
  if (!ready) return;
  change(plan, planned(next, ready.build(specOf(next, seed))), said);
}

/** Puts a changed warm-up in the place of today's; can be undone. */
export function setDrill(next: Drill, said: string): void {
  change(plan, planned(plan.peek().wishes, next), said);
}

/** A seed from the browser's own chance. */
export function freshSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
}

function specOf({ flips, realShare }: Wishes, seed: number) {
  return { taught: taught.peek(), newest: newestCards(progress.peek()), seed, flips, realShare };
}

function planned(next: Wishes, made: Drill) {
  return { wishes: next, made: marked(made) };
}

function marked(made: Drill) {
  return {
    taught: taughtKey(taught.peek()),
    classWords: classWordsKey.peek(),
    drill: mutable(made),
  };
}

/** Equal for equal taught sets. */
export function taughtKey({ correspondences, habits, irregularWords }: Taught): string {
  return [correspondences, habits, irregularWords]
    .map((set) => [...set].sort().join(' '))
    .join('|');
}

/** A drill as the schema's own type, whose lists are not readonly. */
function mutable(made: Drill): InferOutput<typeof drillSchema> {
  return structuredClone(made) as InferOutput<typeof drillSchema>;
}
