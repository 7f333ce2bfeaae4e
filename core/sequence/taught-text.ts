import { HABITS, type Taught } from '../language/taught.ts';
import { parseItem, splitItems } from './item.ts';
import { addItem, dropItem, makeProgress, taughtOf } from './progress.ts';
import type { Item, Sequence } from './sequence.ts';
import { taughtUpTo, teach } from './teach.ts';

/**
 * Why a text does not say what was taught: the part that is wrong as it was
 * written, what may have been meant, and a sentence for the person.
 */
export interface TaughtError {
  readonly code:
    | 'nothing-named'
    | 'unknown-card'
    | 'unknown-habit'
    | 'not-a-word'
    | 'unknown-step'
    | 'not-json'
    | 'unknown-form';
  readonly item: string;
  readonly nearMisses: readonly string[];
  readonly message: string;
}

export type ParsedTaught = { readonly taught: Taught } | { readonly error: TaughtError };

/**
 * Reads what was taught: `step:24`, or a list such as `a,m,s,t,sh,ea=EH`. A
 * list names only what is on cards, so the habits about length (clusters and
 * longer words) count as taught; schwa counts only when it is named.
 */
export function parseTaught(text: string, sequence: Sequence): ParsedTaught {
  const asked = text.trim();
  const step = /^step\s*[:=]\s*(.*)$/i.exec(asked);
  if (step) return parseStep(step[1] as string, asked, sequence);
  return taughtFromList(splitItems(asked), asked);
}

/**
 * Reads the same from JSON: `{"step":24,"add":["sh"],"drop":["word:said"]}`,
 * `{"items":["a","m"]}`, or a bare array of items. Items are in text form.
 */
export function parseTaughtJson(text: string, sequence: Sequence): ParsedTaught {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return failure('not-json', text.trim().slice(0, 40), 'This is not readable as JSON.');
  }
  if (isTexts(value)) return taughtFromList(value, '[]');
  if (!isRecord(value)) return unknownForm(value);
  const unknown = Object.keys(value).find((key) => !['step', 'add', 'drop', 'items'].includes(key));
  if (unknown !== undefined) return unknownForm(unknown);
  const { step, add = [], drop = [], items } = value;
  if (items !== undefined) {
    const alone = Object.keys(value).length === 1;
    return alone && isTexts(items) ? taughtFromList(items, 'items') : unknownForm(items);
  }
  if (typeof step !== 'number') return unknownForm(step);
  if (!isTexts(add)) return unknownForm(add);
  if (!isTexts(drop)) return unknownForm(drop);
  if (!isStep(step, sequence)) return unknownStep(String(step), sequence);
  const added = parseItems(add);
  if ('error' in added) return added;
  const dropped = parseItems(drop);
  if ('error' in dropped) return dropped;
  const plusAdded = added.items.reduce(addItem, makeProgress(sequence, step));
  return { taught: taughtOf(dropped.items.reduce(dropItem, plusAdded)) };
}

const lengthHabits: readonly Item[] = HABITS.filter((habit) => habit !== 'schwa').map((habit) => ({
  kind: 'habit',
  habit,
}));

function taughtFromList(parts: readonly string[], asked: string): ParsedTaught {
  if (parts.length === 0) {
    return failure('nothing-named', asked, 'Nothing is named. Write step:24, or a list: a,m,s,t.');
  }
  const parsed = parseItems(parts);
  if ('error' in parsed) return parsed;
  return { taught: teach([...parsed.items, ...lengthHabits]) };
}

function parseItems(
  parts: readonly string[],
): { readonly items: readonly Item[] } | { readonly error: TaughtError } {
  const items: Item[] = [];
  for (const part of parts) {
    const read = parseItem(part);
    if ('error' in read) return read;
    items.push(read.item);
  }
  return { items };
}

function parseStep(number: string, asked: string, sequence: Sequence): ParsedTaught {
  const upTo = /^\d+$/.test(number) ? Number(number) : Number.NaN;
  if (!isStep(upTo, sequence)) return unknownStep(asked, sequence);
  return { taught: taughtUpTo(sequence, upTo) };
}

function isStep(number: number, sequence: Sequence): boolean {
  return Number.isInteger(number) && number >= 0 && number <= sequence.steps.length;
}

function unknownStep(item: string, sequence: Sequence): ParsedTaught {
  const last = sequence.steps.length;
  const near = last === 0 ? [] : ['step:1', `step:${last}`];
  return failure(
    'unknown-step',
    item,
    `There is no step “${item}”. The order has steps 1 to ${last}.`,
    near,
  );
}

function unknownForm(value: unknown): ParsedTaught {
  const item = shownJson(value);
  return failure(
    'unknown-form',
    item,
    `${item} is not what we expect here. Write {"step":24,"add":["sh"],"drop":[]} or {"items":["a","m"]}.`,
  );
}

function failure(
  code: TaughtError['code'],
  item: string,
  message: string,
  nearMisses: readonly string[] = [],
): { readonly error: TaughtError } {
  return { error: { code, item, nearMisses, message } };
}

function isTexts(value: unknown): value is readonly string[] {
  return Array.isArray(value) && value.every((part) => typeof part === 'string');
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A value as JSON, at most a line of it; one that is nested too deep for JSON is said to be so. */
function shownJson(value: unknown): string {
  try {
    const text = JSON.stringify(value) ?? 'nothing';
    return text.length > 80 ? `${text.slice(0, 80)}…` : text;
  } catch {
    return 'What is nested so deep';
  }
}
