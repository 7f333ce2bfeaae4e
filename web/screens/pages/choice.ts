import { computed } from '@preact/signals';
import { type InferOutput, object, picklist, string } from 'valibot';
import type { Child } from '../../../core/log/class-state.ts';
import { PAGES } from '../../../core/log/event.ts';
import { remembered } from '../../device/remembered.ts';
import { everyone } from '../../state/everyone.ts';
import { asked, parseScreen, takeAsked } from '../../state/route.ts';

/** What can be handed on: three pages, and everything as tables. */
export const WAYS = [...PAGES, 'tables'] as const;
export type Way = (typeof WAYS)[number];

const schema = object({ way: picklist(WAYS), child: string() });

const choice = remembered<InferOutput<typeof schema>>('pages', schema, {
  way: 'meeting',
  child: '',
});

/** The page that is shown. */
export const way = computed<Way>(() => choice.value.way);

/** The child that it is about; the first until she chooses one, null when there is none. */
export const child = computed<Child | null>(
  () => everyone.value.find(({ id }) => id === choice.value.child) ?? everyone.value[0] ?? null,
);

/** Turns to a page. */
export function turnTo(next: Way): void {
  choice.value = { ...choice.peek(), way: next };
}

/** Turns to a child. */
export function turnToChild(id: string): void {
  choice.value = { ...choice.peek(), child: id };
}

/** Takes the child, and the page on it, that the address names; not what another screen, to which she goes, is asked. */
export function takeChild(): void {
  if (parseScreen(location.hash) !== 'pages') return;
  const query = new URLSearchParams(asked.peek());
  const id = query.get('child');
  if (id === null) return;
  turnToChild(id);
  const page = WAYS.find((each) => each === query.get('page'));
  if (page) turnTo(page);
  takeAsked();
}
