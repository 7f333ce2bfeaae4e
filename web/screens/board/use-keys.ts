import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { pileInWords } from '../../../core/boards/shapes/pile-names.ts';
import { type BoardDesk, lettersOf, out, put } from './desk.ts';
import { type Lying, parseLying } from './moves.ts';
import { tell } from './said.ts';
import { say } from './wording.ts';

/**
 * What keys do to a card of the board, once the arrows have come to it: Delete takes it out, a number puts
 * it into that pile. The focus stays at its place.
 */
export function useKeys(root: RefObject<HTMLElement | null>, desk: BoardDesk) {
  const next = useRef<{ readonly group: string; readonly place: number } | null>(null);

  useLayoutEffect(() => {
    if (!next.current) return;
    const { group, place } = next.current;
    next.current = null;
    const element = document.querySelector<HTMLElement>(`[data-group="${group}"]`);
    const cards = cardsIn(element);
    (cards[Math.min(place, cards.length - 1)] ?? element)?.focus();
  });

  const latest = useRef(desk);
  latest.current = desk;
  useEffect(() => {
    root.current?.addEventListener('keydown', onKeyDown);
  }, []);

  function onKeyDown(event: KeyboardEvent): void {
    const found = cardAt(event.target);
    if (!found || event.ctrlKey || event.metaKey || event.altKey) return;
    const { group, card, element } = found;
    const cards = cardsIn(element.closest<HTMLElement>('[data-group]'));
    const done = act(latest.current, event.key, card);
    if (done === 'nothing') return;
    if (done === 'moved') next.current = { group, place: cards.indexOf(element) };
    event.preventDefault();
  }
}

/** Does what a key asks for a card: moves it, or says why not; nothing when it asks for nothing. */
function act(desk: BoardDesk, key: string, card: Lying): 'moved' | 'told' | 'nothing' {
  const letters = lettersOf(card.id);
  if (key === 'Delete' || key === 'Backspace') {
    if (card.pile !== null) {
      out(desk, card.id, card.pile);
      return 'moved';
    }
    tell(say.useKeys.liesInNoPile(letters));
    return 'told';
  }
  if (!/^[1-9]$/.test(key)) return 'nothing';
  const pile = Number(key) - 1;
  if (pile >= desk.piles.length) tell(say.useKeys.thisBoardHasPiles(desk.piles.length));
  else if (pile === card.pile) {
    tell(say.useKeys.alreadyLiesWith(letters, pileInWords(desk.shape, pile)));
  } else if (put(desk, card, pile)) return 'moved';
  return 'told';
}

function cardAt(target: EventTarget | null) {
  const element = (target as Element | null)?.closest<HTMLElement>('[data-card]');
  const group = element?.closest<HTMLElement>('[data-group]')?.dataset.group;
  if (!element || group === undefined) return null;
  return { element, group, card: parseLying(element.dataset.drag ?? '') };
}

function cardsIn(group: HTMLElement | null): HTMLElement[] {
  return group ? [...group.querySelectorAll<HTMLElement>('[data-card]')] : [];
}
