import './popover.css';
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';

interface PopoverProps {
  /** The button it belongs to; it stands below or above it and gives the focus back to it. */
  readonly anchor: HTMLElement;
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A small sheet beside the thing it is about. Escape, a click elsewhere or a choice closes it. */
export function Popover({ anchor, title, onClose, children }: PopoverProps) {
  const sheet = useRef<HTMLDivElement>(null);

  useLayoutEffect(() => {
    const element = sheet.current;
    if (!element) return;
    element.showPopover();
    placeBeside(element, anchor);
    const first = element.querySelector<HTMLElement>('.choice') ?? element.querySelector('button');
    first?.focus({ preventScroll: true });
  }, [anchor]);

  useEffect(() => {
    const onToggle = (event: Event) => {
      if ((event as ToggleEvent).newState !== 'closed') return;
      if (document.activeElement === document.body) anchor.focus({ preventScroll: true });
      onClose();
    };
    const element = sheet.current;
    element?.addEventListener('toggle', onToggle);
    return () => element?.removeEventListener('toggle', onToggle);
  }, [anchor, onClose]);

  return (
    <div ref={sheet} popover="auto" class="popover" role="dialog" aria-label={title}>
      {children}
    </div>
  );
}

const gap = 10;
const margin = 12;

function placeBeside(element: HTMLElement, anchor: HTMLElement): void {
  const about = anchor.getBoundingClientRect();
  const { offsetWidth: width, offsetHeight: height } = element;
  const left = about.left + about.width / 2 - width / 2;
  const below = about.bottom + gap;
  const fitsBelow = below + height <= innerHeight - margin;
  const above = about.top - gap - height;
  const top = fitsBelow || above < margin ? Math.min(below, innerHeight - margin - height) : above;
  element.style.left = `${Math.min(Math.max(left, margin), innerWidth - margin - width)}px`;
  element.style.top = `${Math.max(top, margin)}px`;
}
