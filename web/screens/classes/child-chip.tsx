import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Child } from '../../../core/log/class-state.ts';
import { Popover } from '../../controls/popover.tsx';
import { ChildSheet } from './child-sheet.tsx';
import { toFocus } from './roster-acts.ts';

/** A child's name: tapped, it opens what can be done; dragged, it moves to another group. */
export function ChildChip({ child }: { readonly child: Child }) {
  const [isOpen, setOpen] = useState(false);
  const chip = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    if (toFocus.peek() !== child.id) return;
    toFocus.value = null;
    chip.current?.focus();
  });
  return (
    <>
      <button
        ref={chip}
        type="button"
        class="child-chip"
        data-drag={child.id}
        aria-haspopup="dialog"
        onClick={() => setOpen(true)}
      >
        {child.name}
      </button>
      {isOpen && chip.current && (
        <Popover anchor={chip.current} title={child.name} onClose={() => setOpen(false)}>
          <ChildSheet child={child} onDone={() => setOpen(false)} />
        </Popover>
      )}
    </>
  );
}
