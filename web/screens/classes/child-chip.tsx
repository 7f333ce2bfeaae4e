import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type ChildId, childId } from '../../../core/ids.ts';
import type { Child } from '../../../core/log/class-state.ts';
import { Popover } from '../../controls/popover.tsx';
import { classState } from '../../state/open-class.ts';
import { ChildSheet } from './child-sheet.tsx';
import { toFocus } from './roster-acts.ts';

/** How a name as a place to let another one go is told from a group. */
const SEAT = 'seat ';

/** The child before whom a name was let go; null when it was let go elsewhere. */
export function seatOf(at: string): ChildId | null {
  return at.startsWith(SEAT) ? childId(at.slice(SEAT.length)) : null;
}

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
        data-drop={classState.value.namesBy === 'seat' ? `${SEAT}${child.id}` : undefined}
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
