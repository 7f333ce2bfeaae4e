import { useRef, useState } from 'preact/hooks';

/** A card of an item, as its button says: the item counted from 0, the card from 1. */
interface Place {
  readonly item: number;
  readonly card: number;
  readonly anchor: HTMLElement;
}

/** One stop for the Tab key in a form of many cards; the arrows go from card to card and from row to row. */
export function useRoving(items: number, perRow: number) {
  const ref = useRef<HTMLFieldSetElement>(null);
  const [at, setAt] = useState(0);
  const focusOn = (button: HTMLElement | undefined) => {
    const place = placeOf(button ?? null);
    if (!place) return;
    setAt(place.item);
    place.anchor.focus();
  };
  return {
    ref,
    at,
    placeOf,
    onKeyDown(event: KeyboardEvent): void {
      const here = placeOf(event.target);
      if (!here || !ref.current) return;
      const buttons = [...ref.current.querySelectorAll<HTMLElement>('[data-item]')];
      const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
      const rows = { ArrowDown: perRow, ArrowUp: -perRow }[event.key];
      if (step !== undefined) focusOn(buttons[buttons.indexOf(here.anchor) + step]);
      else if (rows !== undefined) {
        const item = Math.min(items - 1, Math.max(0, here.item + rows));
        focusOn(buttons.find(({ dataset }) => dataset.item === `${item}`));
      } else return;
      event.preventDefault();
    },
  };
}

function placeOf(target: EventTarget | null): Place | null {
  if (!(target instanceof HTMLElement)) return null;
  const { item, card } = target.dataset;
  if (item === undefined || card === undefined) return null;
  return { item: Number(item), card: Number(card), anchor: target };
}
