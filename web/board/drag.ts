/**
 * Cards dragged by mouse, pen or finger, over pointer events alone. A mouse
 * drags as soon as it moves; a finger holds the card a moment first, so that the
 * page still scrolls under a quick one. Elements tell what they are:
 * `data-card` and `data-pile` on cards, `data-drop` on piles and tray.
 */
import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Lying } from './moves.ts';

/** The card that is dragged, and the place under it: a pile, `tray`, or none; null when none is. */
export const dragged = signal<{
  readonly card: Lying;
  readonly over: number | 'tray' | null;
} | null>(null);

/** How far a mouse moves before it drags, in pixels. */
const SLACK = 5;
/** How long a finger holds before it drags, in milliseconds, and how far it may tremble. */
const HOLD = 240;
const TREMBLE = 9;
/** Near the edge of the window the page scrolls under the card. */
const EDGE = 56;
const SCROLL_STEP = 10;
const SCROLL_EVERY = 16;

/** Lets the cards within an element be dragged; `drop` hears where one was let go. */
export function useDrag(drop: (card: Lying, at: number | 'tray') => void) {
  const root = useRef<HTMLDivElement>(null);
  const latest = useRef(drop);
  latest.current = drop;
  useEffect(() => {
    const element = root.current;
    return element ? listen(element, (card, at) => latest.current(card, at)) : undefined;
  }, []);
  return root;
}

function listen(root: HTMLElement, drop: (card: Lying, at: number | 'tray') => void): () => void {
  let held: Held | null = null;
  let isJustDropped = false;
  const ends = new AbortController();
  const { signal } = ends;

  root.addEventListener('pointerdown', onDown, { signal });
  addEventListener('pointermove', onMove, { signal });
  addEventListener('pointerup', onUp, { signal });
  addEventListener('pointercancel', letGo, { signal });
  addEventListener('keydown', (event) => event.key === 'Escape' && letGo(), { signal });
  root.addEventListener('touchmove', (event) => held?.ghost && event.preventDefault(), {
    signal,
    passive: false,
  });
  root.addEventListener('contextmenu', (event) => held && event.preventDefault(), { signal });
  root.addEventListener('dragstart', (event) => event.preventDefault(), { signal });
  root.addEventListener('click', onClick, { signal, capture: true });
  return () => {
    letGo();
    ends.abort();
  };

  function onDown(event: PointerEvent): void {
    isJustDropped = false;
    const element = (event.target as Element).closest<HTMLElement>('[data-card]');
    if (!element || held || event.button !== 0 || !event.isPrimary) return;
    const { card = '', pile = '' } = element.dataset;
    held = {
      element,
      card: { id: card, pile: pile === '' ? null : Number(pile) },
      pointer: event.pointerId,
      isTouch: event.pointerType === 'touch',
      x: event.clientX,
      y: event.clientY,
    };
    if (held.isTouch) held.timer = setTimeout(lift, HOLD);
  }

  function onMove(event: PointerEvent): void {
    if (!held || event.pointerId !== held.pointer) return;
    const way = Math.hypot(event.clientX - held.x, event.clientY - held.y);
    if (!held.ghost && held.isTouch) {
      if (way > TREMBLE) letGo();
      return;
    }
    if (!held.ghost && way > SLACK) lift();
    if (!held?.ghost) return;
    held.at = { x: event.clientX, y: event.clientY };
    move(held, event.clientX, event.clientY);
  }

  function lift(): void {
    if (!held || held.ghost) return;
    const box = held.element.getBoundingClientRect();
    const ghost = held.element.cloneNode(true) as HTMLElement;
    ghost.classList.add('dragged-card');
    ghost.setAttribute('aria-hidden', 'true');
    ghost.tabIndex = -1;
    ghost.style.width = `${box.width}px`;
    ghost.style.fontSize = getComputedStyle(held.element).fontSize;
    document.body.append(ghost);
    held.ghost = { element: ghost, dx: held.x - box.left, dy: held.y - box.top };
    held.element.classList.add('lifted');
    held.at = { x: held.x, y: held.y };
    held.scrolling = setInterval(scrollAtEdge, SCROLL_EVERY);
    move(held, held.x, held.y);
  }

  function scrollAtEdge(): void {
    if (!held?.at) return;
    const { x, y } = held.at;
    if (y >= EDGE && y <= innerHeight - EDGE) return;
    scrollBy(0, y < EDGE ? -SCROLL_STEP : SCROLL_STEP);
    move(held, x, y);
  }

  function onUp(event: PointerEvent): void {
    if (!held || event.pointerId !== held.pointer) return;
    const { card } = held;
    const over = dragged.peek()?.over ?? null;
    isJustDropped = held.ghost !== undefined;
    letGo();
    if (isJustDropped && over !== null) drop(card, over);
  }

  function letGo(): void {
    clearTimeout(held?.timer);
    clearInterval(held?.scrolling);
    held?.ghost?.element.remove();
    held?.element.classList.remove('lifted');
    held = null;
    dragged.value = null;
  }

  /** The click that ends a drag is none. */
  function onClick(event: MouseEvent): void {
    if (!isJustDropped) return;
    isJustDropped = false;
    event.preventDefault();
    event.stopPropagation();
  }
}

interface Held {
  readonly element: HTMLElement;
  readonly card: Lying;
  readonly pointer: number;
  readonly isTouch: boolean;
  readonly x: number;
  readonly y: number;
  /** Where the pointer is now. */
  at?: { readonly x: number; readonly y: number };
  timer?: ReturnType<typeof setTimeout>;
  scrolling?: ReturnType<typeof setInterval>;
  ghost?: { readonly element: HTMLElement; readonly dx: number; readonly dy: number };
}

function move({ card, ghost }: Held, x: number, y: number): void {
  if (!ghost) return;
  ghost.element.style.transform = `translate(${x - ghost.dx}px, ${y - ghost.dy}px)`;
  const place = document.elementFromPoint(x, y)?.closest<HTMLElement>('[data-drop]');
  const name = place?.dataset.drop;
  const over = name === undefined ? null : name === 'tray' ? 'tray' : Number(name);
  const before = dragged.peek();
  if (before?.card !== card || before.over !== over) dragged.value = { card, over };
}
