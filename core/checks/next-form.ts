import type { JudgeContext } from '../boards/judge/judge-context.ts';
import type { CheckForm, CheckKind, MadeForm } from './check-form.ts';
import { makeForm } from './make-form.ts';

/** For whom the next form is, and what there was before. */
export interface NextFormSpec {
  readonly kind: CheckKind;
  /** How many items are wanted. */
  readonly count: number;
  /** The child, by id. */
  readonly child: string;
  /** The forms that this child has read, oldest first. */
  readonly own: readonly CheckForm[];
  /** The forms that any child of the class has read. */
  readonly all: readonly CheckForm[];
}

/**
 * The form that a child reads next: the same until it was read, then another
 * one. No form of the class comes again, and the nonsense words that this child
 * has read come again only when there are too few others. Its seed is made of
 * who reads and how often that child has read, so that two children beside
 * each other do not read the same.
 */
export function nextForm(spec: NextFormSpec, context: JudgeContext): MadeForm {
  const { kind, count, child, own, all } = spec;
  const turn = own.filter((form) => form.kind === kind).length;
  const read = new Set(own.flatMap(({ items }) => items.map(({ text }) => text)));
  const before = new Set(all.filter((form) => form.kind === kind).map(wordsOf));
  let made: MadeForm;
  let again = 0;
  do {
    const seed = seedOf(`${child} ${kind} ${turn} ${again}`);
    made = makeForm(kind, context, seed, count, read);
    again++;
  } while (before.has(wordsOf(made.form)) && again < MOST_TRIES);
  return made;
}

/** With a handful of items there are only so many forms; then one comes again. */
const MOST_TRIES = 20;

function wordsOf({ items }: CheckForm): string {
  return items.map(({ text }) => text).join(' ');
}

/** A text as a number of 32 bits: FNV-1a (Fowler, Noll & Vo; RFC 9923). */
function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) {
    hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  }
  return hash >>> 0;
}
