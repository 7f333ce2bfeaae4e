import type { ComponentChildren } from 'preact';
import { say } from './wording.ts';

/** What a screen needs did not arrive: what that is, and the one thing to do. */
export function NotArrived({
  children,
  onAgain,
}: {
  readonly children: ComponentChildren;
  readonly onAgain: () => void;
}) {
  return (
    <div class="shortfall" role="alert">
      <p>{children}</p>
      <button type="button" class="button" onClick={onAgain}>
        {say.notArrived.tryAgain}
      </button>
    </div>
  );
}
