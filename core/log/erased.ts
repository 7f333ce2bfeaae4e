import type { ChildId } from '../ids.ts';
import type { LogEvent } from './event.ts';
import { isObject } from './is-value.ts';
import { understand } from './understand.ts';

/**
 * Whether an event goes with what is erased for good: it is one of these ids, or says something of one. Ids of
 * children, checks and events are unlike each other, so that one set holds all. A drill that an erased child
 * was in stays: it is the class's.
 */
export function isErased({ id, body }: LogEvent, erased: ReadonlySet<string>): boolean {
  if (erased.size === 0) return false;
  if (erased.has(id)) return true;
  return isObject(body) && NAMED.some((field) => erased.has(body[field] as string));
}

/**
 * These ids, and those of everything that goes with them: what was said of a child, and what was said of
 * that afterwards. Time O(events) for each step of saying something of something.
 */
export function erasedWith(
  events: readonly LogEvent[],
  ids: Iterable<string>,
): ReadonlySet<string> {
  const erased = new Set(ids);
  for (let before = -1; before < erased.size; ) {
    before = erased.size;
    for (const event of events) {
      if (!isErased(event, erased)) continue;
      erased.add(event.id);
      // What is marked in a check names the check and not the child.
      const { checkId } = event.body as { readonly checkId?: unknown };
      if (typeof checkId === 'string') erased.add(checkId);
    }
  }
  return erased;
}

/**
 * What is to be erased so that nothing is left of a child: the child itself, and every line she wrote that has
 * one of its names in it; names of fewer than three letters could stand for anything.
 */
export function idsToErase(events: readonly LogEvent[], child: ChildId): readonly string[] {
  const names = new Set<string>();
  for (const { kind, body } of events.map(understand).filter((event) => event !== null)) {
    if (kind === 'set' && body.of === 'child' && body.id === child && body.field === 'name') {
      if (/\p{L}.*\p{L}.*\p{L}/u.test(body.value)) names.add(body.value.trim());
    }
  }
  const lines = events.filter(({ kind, body }) => {
    if (kind !== 'noted' && kind !== 'wrote') return false;
    const { text } = body as { readonly text?: unknown };
    return typeof text === 'string' && [...names].some((name) => saysName(text, name));
  });
  return [child, ...lines.map(({ id }) => id)];
}

/** Whether a line has a name in it as a word of its own. */
function saysName(text: string, name: string): boolean {
  const [said, sought] = [text.toLowerCase(), name.toLowerCase()];
  const isLetter = (sign: string | undefined) => sign !== undefined && /[\p{L}\p{N}]/u.test(sign);
  for (let at = said.indexOf(sought); at >= 0; at = said.indexOf(sought, at + 1)) {
    if (!isLetter(said[at - 1]) && !isLetter(said[at + sought.length])) return true;
  }
  return false;
}

/** The fields of a body that say of what it is. */
const NAMED = ['id', 'child', 'about', 'value', 'checkId', 'event', 'mark'] as const;
