import type { Child } from '../../../core/log/class-state.ts';
import { classState } from '../../state/open-class.ts';
import { EraseChild } from './erase-child.tsx';
import { bringBack } from './roster-acts.ts';
import { say } from './wording.ts';

/** The children who were taken out of the class: each can come back, or everything about it be deleted. */
export function TakenOut() {
  const out = [...classState.value.children.values()].filter(({ removed }) => removed);
  if (out.length === 0) return null;
  return (
    <details class="taken-out-children">
      <summary>
        {say.takenOut.takenOut(
          out.length === 1 ? say.takenOut.oneChild : say.takenOut.children(out.length),
        )}
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
        aria-label={say.takenOut.bringBack(child.name)}
        onClick={() => bringBack(child)}
      >
        {say.takenOut.bringBackAlone}
      </button>
      <EraseChild child={child} />
    </li>
  );
}
