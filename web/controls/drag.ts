/**
 * Cards and names dragged by mouse, pen or finger, over pointer events alone. A mouse drags as soon as
 * it moves; a finger holds a moment first, so that the page still scrolls under a quick one. Elements
 * tell what they are: `data-drag` on what can be dragged, `data-drop` on where it can be let go.
 */
import './drag.css';
import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

/** What is dragged, and the place under it, null for none, as their elements say; null when nothing is. */
export const dragged = signal<{ readonly what: string; readonly over: string | null } | null>(null);

/** How far a mouse moves before it drags, in pixels. */
const SLACK = 5;
/** How long a finger holds before it drags, in milliseconds, and how far it may tremble. */
const HOLD = 240;
const TREMBLE = 9;
/** Near the edge of the window the page scrolls under the card. */
const EDGE = 56;
const SCROLL_STEP = 10;
const SCROLL_EVERY = 16;

/** Lets what is within an element be dragged; `drop` hears what was let go, and where. */
export function useDrag<Root extends HTMLElement = HTMLDivElement>(
  drop: (what: string, at: string) => void,
) {
  const root = useRef<Root>(null);
  const latest = useRef(drop);
  latest.current = drop;
  useEffect(() => {
    const element = root.current;
    return element ? listen(element, (what, at) => latest.current(what, at)) : undefined;
  }, []);
  return root;
}

function listen(root: HTMLElement, drop: (what: string, at: string) => void): () => void {
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
    const target = event.target as Element;
    // In a field a mouse that moves selects text.
    if (target.closest('input')) return;
    const element = target.closest<HTMLElement>('[data-drag]');
    if (!element || held || event.button !== 0 || !event.isPrimary) return;
    held = {
      element,
      what: element.dataset.drag ?? '',
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
    ghost.classList.add('dragged');
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
    const { what } = held;
    const over = dragged.peek()?.over ?? null;
    isJustDropped = held.ghost !== undefined;
    letGo();
    if (isJustDropped && over !== null) drop(what, over);
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
    // A key's click is meant, wherever the mouse let go before.
    if (!isJustDropped || event.detail === 0) return;
    isJustDropped = false;
    event.preventDefault();
    event.stopPropagation();
  }
}

interface Held {
  readonly element: HTMLElement;
  readonly what: string;
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

function move({ what, ghost }: Held, x: number, y: number): void {
  if (!ghost) return;
  ghost.element.style.transform = `translate(${x - ghost.dx}px, ${y - ghost.dy}px)`;
  const place = document.elementFromPoint(x, y)?.closest<HTMLElement>('[data-drop]');
  const over = place?.dataset.drop ?? null;
  const before = dragged.peek();
  if (before?.what !== what || before.over !== over) dragged.value = { what, over };
}
