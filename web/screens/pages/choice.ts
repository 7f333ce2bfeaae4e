import { computed } from '@preact/signals';
import { boolean, custom, type InferOutput, object, optional, picklist } from 'valibot';
import { type ChildId, childId, isChildId } from '../../../core/ids.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { PAGES } from '../../../core/log/event.ts';
import { remembered } from '../../device/remembered.ts';
import { everyone } from '../../state/everyone.ts';
import { asked, parseScreen, takeAsked } from '../../state/route.ts';

/** What can be handed on: three pages, who needs what, and everything as tables. */
export const WAYS = [...PAGES, 'lacking', 'tables'] as const;
export type Way = (typeof WAYS)[number];

/** The languages of the note for a family. */
export const LANGUAGES = ['english', 'spanish'] as const;

const schema = object({
  way: picklist(WAYS),
  child: custom<ChildId>(isChildId),
  language: optional(picklist(LANGUAGES), 'english'),
  each: optional(boolean(), false),
});

const choice = remembered<InferOutput<typeof schema>>('pages', schema, {
  way: 'meeting',
  child: childId(''),
  language: 'english',
  each: false,
});

/** The page that is shown. */
export const way = computed<Way>(() => choice.value.way);

/** The child that it is about; the first until she chooses one, null when there is none. */
export const child = computed<Child | null>(
  () => everyone.value.find(({ id }) => id === choice.value.child) ?? everyone.value[0] ?? null,
);

/** The language of the note for a family. */
export const language = computed(() => choice.value.language);

/** Has the note for a family in this language from now on. */
export function speak(next: (typeof LANGUAGES)[number]): void {
  choice.value = { ...choice.peek(), language: next };
}

/** Turns to a page. */
export function turnTo(next: Way): void {
  choice.value = { ...choice.peek(), way: next };
}

/** Whether notes for families are for each child of the class, not for one. */
export const forEach = computed(() => choice.value.each && choice.value.way === 'family');

/** Turns to a child. */
export function turnToChild(id: ChildId): void {
  choice.value = { ...choice.peek(), child: id, each: false };
}

/** Turns to the notes for all families of the class. */
export function turnToEach(): void {
  choice.value = { ...choice.peek(), each: true };
}

/** Takes the child, and the page on it, that the address names; not what another screen, to which she goes, is asked. */
export function takeChild(): void {
  if (parseScreen(location.hash) !== 'pages') return;
  const query = new URLSearchParams(asked.peek());
  const id = query.get('child');
  if (id === null) return;
  turnToChild(childId(id));
  const page = WAYS.find((each) => each === query.get('page'));
  if (page) turnTo(page);
  takeAsked();
}
