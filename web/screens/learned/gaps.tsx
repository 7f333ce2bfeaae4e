import './gaps.css';
import { gapsOf } from '../../../core/sequence/gaps.ts';
import { addItem } from '../../../core/sequence/progress.ts';
import type { Step } from '../../../core/sequence/sequence.ts';
import { progress, setProgress } from '../../state/progress.ts';

/** What the order now has above the line and the class has not had: it comes first. */
export function Gaps() {
  const gaps = gapsOf(progress.value);
  if (gaps.length === 0) return null;
  return (
    <section class="gaps" aria-label="Not yet taught above the line">
      <p>
        <b>Above the line, not yet taught.</b> When your class has had one of these, say so here.
      </p>
      <ul>
        {gaps.map((step) => (
          <li key={step.number}>
            <button type="button" class="button" onClick={() => markTaught(step)}>
              {step.number}. {step.title}: taught now
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Its spellings; words to know by heart stay as they are. */
function markTaught({ title, items }: Step): void {
  const spellings = items.filter(({ kind }) => kind !== 'word');
  setProgress(spellings.reduce(addItem, progress.peek()), `Taught ${title}.`);
}
