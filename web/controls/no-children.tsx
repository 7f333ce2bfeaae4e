import './no-children.css';
import type { ComponentChildren } from 'preact';
import { linkTo } from '../state/route.ts';
import { LookAround } from './look-around.tsx';
import { say } from './wording.ts';

/** A screen about children before there are any: what it is for, and the one next step. */
export function NoChildren({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ComponentChildren;
}) {
  return (
    <div class="no-children">
      <h1>{title}</h1>
      <p>{children}</p>
      <p>
        <a class="button next" href={linkTo('class')}>
          {say.noChildren.addChildren}
        </a>
      </p>
      <LookAround />
    </div>
  );
}
