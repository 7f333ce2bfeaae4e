import './classes.css';
import { LookAround } from '../../controls/look-around.tsx';
import { everyone } from '../../state/everyone.ts';
import { isLookedAt } from '../../state/open-class.ts';
import { AddChildren } from './add-children.tsx';
import { BringList } from './bring-list.tsx';
import { ClassName } from './class-name.tsx';
import { Classes } from './classes-here.tsx';
import { Groups } from './groups.tsx';
import { SafeKeeping } from './safe-keeping.tsx';
import { TakenOut } from './taken-out.tsx';
import { say } from './wording.ts';

/** The class: its children and groups first; the other classes and how all is kept safe beside them. */
export function ClassPage() {
  const hasChildren = everyone.value.length > 0;
  return (
    <div class="class-page">
      <div class="class-people">
        <ClassName />
        {hasChildren && <Groups />}
        <AddChildren />
        {!hasChildren && <LookAround />}
        <BringList />
        {!hasChildren && <Groups />}
        <TakenOut />
      </div>
      <aside class="class-keep" aria-label={say.classes.classesAndCopies}>
        {!isLookedAt.value && <SafeKeeping />}
        <Classes />
      </aside>
    </div>
  );
}
