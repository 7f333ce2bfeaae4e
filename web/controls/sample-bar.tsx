import './look-around.css';
import { isLookedAt } from '../state/open-class.ts';
import { leaveSample } from '../state/sample.ts';
import { say } from './wording.ts';

/** Says on every screen that this is the sample class, with the way back to hers. */
export function SampleBar() {
  if (!isLookedAt.value) return null;
  return (
    <div class="sample-bar">
      <p>{say.sampleBar.allNamesAreInvented(<strong>{say.sampleBar.thisIsASample}</strong>)}</p>
      <button type="button" class="button" onClick={() => void leaveSample()}>
        {say.sampleBar.backToMyClass}
      </button>
    </div>
  );
}
