import { computed } from '@preact/signals';
import {
  array,
  boolean,
  custom,
  type InferOutput,
  integer,
  maxValue,
  minValue,
  nullable,
  number,
  object,
  optional,
  pipe,
  string,
  transform,
} from 'valibot';
import {
  type Dictation,
  type DictationSources,
  dictationFor,
  fitDictation,
  newestItems,
} from '../../core/dictation/dictation.ts';
import type { CardId } from '../../core/language/card-id.ts';
import { isCard } from '../../core/log/is-card.ts';
import { itemKey } from '../../core/sequence/item.ts';
import type { Progress } from '../../core/sequence/progress.ts';
import type { Item } from '../../core/sequence/sequence.ts';
import { remembered } from '../device/remembered.ts';
import { classWordsKey } from './class-words.ts';
import { readyEngine } from './engine-ready.ts';
import { missedInSpelling } from './papers.ts';
import { freshSeed, taughtKey } from './plan.ts';
import { progress, taught } from './progress.ts';
import { change } from './undo.ts';

const card = optional(custom<CardId>(isCard));

/** Words or sentences as they are remembered; the card was remembered as `practises` before. */
export const dictated = array(
  pipe(
    object({ text: string(), isNew: boolean(), practices: card, practises: card }),
    transform(({ text, isNew, practises, practices = practises }) => ({
      text,
      isNew,
      ...(practices !== undefined && { practices }),
    })),
  ),
);

const countsSchema = object({
  words: pipe(number(), integer(), minValue(0), maxValue(20)),
  sentences: pipe(number(), integer(), minValue(0), maxValue(10)),
});

const schema = object({
  counts: countsSchema,
  /**
   * Today's dictation, and what had been taught and decided about words when it
   * was made; null when there is none yet.
   */
  made: nullable(
    object({
      taught: string(),
      classWords: optional(string(), ''),
      dictation: object({
        words: dictated,
        sentences: dictated,
        shortfall: nullable(string()),
      }),
    }),
  ),
});

/** How many words and sentences she wants. */
export type Counts = InferOutput<typeof countsSchema>;

const kept = remembered('dictation', schema, { counts: { words: 6, sentences: 2 }, made: null });

/** How many words and sentences she wants, remembered from day to day. */
export const counts = computed(() => kept.value.counts);

/**
 * Today's dictation for what is taught now; null until it was made. What she has
 * blocked since is left out.
 */
export const dictation = computed<Dictation | null>(() => {
  const { made } = kept.value;
  if (made?.taught !== taughtKey(taught.value)) return null;
  if (made.classWords === classWordsKey.value) return made.dictation;
  const ready = readyEngine();
  return ready ? fitDictation(made.dictation, ready) : null;
});

/** Makes a dictation when there is none for what is taught now. Nothing of hers is replaced. */
export function ensureDictation(sources: DictationSources): void {
  if (dictation.peek() === null) kept.value = madeWith(kept.peek().counts, sources);
}

/** Throws the dictation away: its sentences may name children of a class that was deleted. */
export function forgetDictation(): void {
  kept.value = { counts: kept.peek().counts, made: null };
}

/** Makes the dictation again, with other counts or by another chance; can be undone. */
export function remakeDictation(next: Counts, sources: DictationSources, said: string): void {
  change(kept, madeWith(next, sources), said);
}

/** Puts a changed dictation in the place of today's; can be undone. */
export function setDictation(next: Dictation, said: string): void {
  change(kept, { counts: kept.peek().counts, made: marked(next) }, said);
}

/** Much more of the same kind than is on the page, to swap from. */
export function moreToDictate(sources: DictationSources): Dictation {
  return dictationFor({ ...specNow(), words: 40, sentences: 16 }, sources);
}

/** What was taught last and is still held taught: the items of the last step that has any, or else what she added. */
export function newestTaught({ sequence, upTo, added, dropped }: Progress): readonly Item[] {
  const out = new Set(dropped.map(itemKey));
  for (let step = Math.min(upTo, sequence.steps.length); step > 0; step--) {
    const items = newestItems(sequence, step).filter((item) => !out.has(itemKey(item)));
    if (items.length > 0) return items;
  }
  return added;
}

function madeWith(wanted: Counts, sources: DictationSources) {
  return { counts: wanted, made: marked(dictationFor({ ...specNow(), ...wanted }, sources)) };
}

function specNow() {
  return {
    taught: taught.peek(),
    newest: newestTaught(progress.peek()),
    practice: missedInSpelling.peek(),
    seed: freshSeed(),
  };
}

function marked({ words, sentences, shortfall }: Dictation) {
  return {
    taught: taughtKey(taught.peek()),
    classWords: classWordsKey.peek(),
    dictation: { words: [...words], sentences: [...sentences], shortfall },
  };
}
