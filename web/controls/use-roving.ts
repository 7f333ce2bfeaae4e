import { useLayoutEffect, useRef } from 'preact/hooks';
import { leadsTo, type RovingPlace, type Ways } from './roving.ts';

/**
 * One stop for the Tab key among many things; the arrows go from one to the next (`leadsTo`). What comes
 * back goes on the element around them; each thing has `data-rove`, each row `data-rove-row`, and where
 * several things share a place, what holds them has `data-rove-cell`. Tab comes back to where she was last;
 * `onMove` is told of each thing that an arrow led to.
 */
export function useRoving<Around extends HTMLElement>(
  ways: Ways = {},
  onMove?: (to: HTMLElement) => void,
) {
  const ref = useRef<Around>(null);
  const stop = useRef<{ readonly thing: HTMLElement; readonly at: number } | null>(null);
  const stopAt = (all: readonly HTMLElement[], at: number) => {
    const thing = all[at];
    stop.current = thing ? { thing, at } : null;
    for (const each of all) {
      const index = each === thing ? 0 : -1;
      if (each.getAttribute('tabindex') !== `${index}`) each.tabIndex = index;
    }
  };
  useLayoutEffect(() => {
    const all = thingsIn(ref.current);
    const { thing, at } = stop.current ?? { at: 0 };
    const still = thing ? all.indexOf(thing) : -1;
    stopAt(all, still >= 0 ? still : Math.min(at, all.length - 1));
  });
  return {
    ref,
    onFocusIn(event: FocusEvent): void {
      const all = thingsIn(ref.current);
      const at = all.indexOf(thingOf(event.target) as HTMLElement);
      if (at >= 0) stopAt(all, at);
    },
    onKeyDown(event: KeyboardEvent): void {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const all = thingsIn(ref.current);
      const at = all.indexOf(thingOf(event.target) as HTMLElement);
      const to = at < 0 ? null : leadsTo(event.key, at, placesOf(all), ways);
      if (to === null) return;
      event.preventDefault();
      const thing = all[to];
      if (!thing || to === at) return;
      thing.focus();
      onMove?.(thing);
    },
  };
}

function thingOf(target: EventTarget | null): HTMLElement | null {
  return target instanceof Element ? target.closest<HTMLElement>('[data-rove]') : null;
}

function thingsIn(around: HTMLElement | null): readonly HTMLElement[] {
  return around ? [...around.querySelectorAll<HTMLElement>('[data-rove]')] : [];
}

/** Where each of these stands: rows as they follow on each other, columns by what holds the things. */
function placesOf(all: readonly HTMLElement[]): readonly RovingPlace[] {
  let place: RovingPlace = { row: -1, column: -1 };
  let [lastRow, lastCell]: (Element | null | undefined)[] = [];
  return all.map((thing) => {
    const row = thing.closest('[data-rove-row]');
    const cell = thing.closest('[data-rove-cell]') ?? thing;
    if (row !== lastRow) place = { row: place.row + 1, column: 0 };
    else if (cell !== lastCell) place = { row: place.row, column: place.column + 1 };
    [lastRow, lastCell] = [row, cell];
    return place;
  });
}
