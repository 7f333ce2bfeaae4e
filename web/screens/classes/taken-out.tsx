import type { Child } from '../../../core/log/class-state.ts';
import { classState } from '../../state/open-class.ts';
import { EraseChild } from './erase-child.tsx';
import { bringBack } from './roster-acts.ts';

/** The children who were taken out of the class: each can come back, or everything about it be deleted. */
export function TakenOut() {
  const out = [...classState.value.children.values()].filter(({ removed }) => removed);
  if (out.length === 0) return null;
  return (
    <details class="taken-out-children">
      <summary>
        Taken out of the class: {out.length === 1 ? 'one child' : `${out.length} children`}
      </summary>
      <ul>
        {out.map((child) => (
          <Out key={child.id} child={child} />
        ))}
      </ul>
    </details>
  );
}

function Out({ child }: { readonly child: Child }) {
  return (
    <li>
      <b>{child.name}</b>
      <button
        type="button"
        class="button small"
        aria-label={`Bring ${child.name} back`}
        onClick={() => bringBack(child)}
      >
        Bring back
      </button>
      <EraseChild child={child} />
    </li>
  );
}
