import './who-line.css';
import type { ChildId } from '../../../core/ids.ts';
import { readerAt } from '../../../core/warm-up/calling.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { children, classState } from '../../state/open-class.ts';
import { say } from './wording.ts';

interface ReaderLineProps {
  readonly now: Running;
  /** She wants to say who reads. */
  readonly onWho: () => void;
}

/** Who reads and who comes then, in one line above the row, where a small screen has no room for more. */
export function ReaderLine({ now: { calling, standing }, onWho }: ReaderLineProps) {
  if (children.value.length === 0 || standing.dictating !== null) return null;
  const reader = calling.on ? readerAt(calling, standing.at) : null;
  const [next] = calling.on ? calling.upcoming : [];
  return (
    <section class="who-line" aria-label={say.readerLine.whoReads}>
      <p>
        <b>{reader === null ? say.readerLine.allTogether : nameOf(reader)}</b>
        {next !== undefined && (
          <span class="quiet small"> {say.readerLine.thenReads(nameOf(next))}</span>
        )}
      </p>
      <button type="button" class="button" aria-haspopup="dialog" onClick={onWho}>
        {say.readerLine.who}
      </button>
    </section>
  );
}

function nameOf(child: ChildId): string {
  return classState.value.children.get(child)?.name ?? say.readerLine.aChild;
}
