import { useEffect, useState } from 'preact/hooks';
import type { Child } from '../../../core/log/class-state.ts';
import { FamilyNote } from './family-note.tsx';

/**
 * The note for each family of the class, one under the other, each on a sheet of its own: printed or saved as
 * one file. They are made one by one, so that the page answers in between; `onAll` is told when all are there.
 */
export function FamilyNotes({
  children,
  onAll,
}: {
  readonly children: readonly Child[];
  readonly onAll: () => void;
}) {
  const [made, setMade] = useState(1);
  useEffect(() => {
    if (made >= children.length) return onAll();
    const timer = setTimeout(() => setMade(made + 1));
    return () => clearTimeout(timer);
  }, [made, children.length]);
  return (
    <div class="family-notes">
      {children.slice(0, made).map((each) => (
        <FamilyNote key={each.id} child={each} />
      ))}
    </div>
  );
}
