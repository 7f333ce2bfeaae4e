import './gaps.css';
import { gapsOf } from '../../../core/sequence/gaps.ts';
import { addItem } from '../../../core/sequence/progress.ts';
import type { Step } from '../../../core/sequence/sequence.ts';
import { progress, setProgress } from '../../state/progress.ts';
import { say } from './wording.ts';

/** What the order now has above the line and the class has not had: it comes first. */
export function Gaps() {
  const gaps = gapsOf(progress.value);
  if (gaps.length === 0) return null;
  return (
    <section class="gaps" aria-label={say.gaps.notYetTaughtAbove}>
      <p>{say.gaps.whenYourClassHas(<b>{say.gaps.aboveTheLineNot}</b>)}</p>
      <ul>
        {gaps.map((step) => (
          <li key={step.number}>
            <button type="button" class="button" onClick={() => markTaught(step)}>
              {say.gaps.taughtNow(step.number, step.title)}
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
  setProgress(spellings.reduce(addItem, progress.peek()), say.gaps.taught(title));
}
