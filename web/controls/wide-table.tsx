import './wide-table.css';
import type { ComponentChildren } from 'preact';

/** Room for a table that may be wider than a phone: it scrolls sideways, by the keyboard too. */
export function WideTable({
  name,
  children,
}: {
  readonly name: string;
  readonly children: ComponentChildren;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached without a mouse (WCAG 2.1.1).
    <section class="figures-scroll" aria-label={name} tabIndex={0}>
      {children}
    </section>
  );
}
