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

/** The class: its groups and where each stands, its children, the other classes, and how all is kept safe. */
export function ClassPage() {
  return (
    <div class="class-page">
      <ClassName />
      <AddChildren />
      {everyone.value.length === 0 && <LookAround />}
      <BringList />
      <Groups />
      <Classes />
      {!isLookedAt.value && <SafeKeeping />}
    </div>
  );
}
