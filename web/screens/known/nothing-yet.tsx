import type { ComponentChildren } from 'preact';
import { linkTo } from '../../state/route.ts';
import type { Screen } from '../../state/screens.ts';

/** There is nothing to show yet: why, in a kind word, and the one next step. */
export function NothingYet({
  to,
  act,
  children,
}: {
  readonly to: Screen;
  readonly act: string;
  readonly children: ComponentChildren;
}) {
  return (
    <div class="known-empty">
      <p>{children}</p>
      <a class="button next" href={linkTo(to)}>
        {act}
      </a>
    </div>
  );
}
