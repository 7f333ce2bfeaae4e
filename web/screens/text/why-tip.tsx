import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

interface WhyTipProps {
  readonly anchor: HTMLElement;
  readonly onEnter: () => void;
  readonly onLeave: () => void;
  readonly children: ComponentChildren;
}

const gap = 8;
const margin = 12;

/** A short reason beside a word. It takes no focus, and stays while the pointer is on it. */
export function WhyTip({ anchor, onEnter, onLeave, children }: WhyTipProps) {
  const tip = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = tip.current;
    if (!element) return;
    element.showPopover();
    const about = anchor.getBoundingClientRect();
    const { offsetWidth: width, offsetHeight: height } = element;
    const left = Math.min(Math.max(about.left, margin), innerWidth - margin - width);
    const fitsBelow = about.bottom + gap + height <= innerHeight - margin;
    element.style.left = `${left}px`;
    element.style.top = `${fitsBelow ? about.bottom + gap : about.top - gap - height}px`;
  }, [anchor]);
  return (
    <div
      ref={tip}
      id="why-tip"
      role="tooltip"
      popover="manual"
      class="why-tip"
      onMouseEnter={onEnter}
      onMouseLeave={onLeave}
    >
      {children}
    </div>
  );
}
