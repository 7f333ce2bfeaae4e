import './classes.css';
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
      <BringList />
      <Groups />
      <Classes />
      <SafeKeeping />
    </div>
  );
}
