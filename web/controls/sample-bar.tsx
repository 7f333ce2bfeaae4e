import './look-around.css';
import { isLookedAt } from '../state/open-class.ts';
import { leaveSample } from '../state/sample.ts';

/** Says on every screen that this is the sample class, with the way back to hers. */
export function SampleBar() {
  if (!isLookedAt.value) return null;
  return (
    <div class="sample-bar">
      <p>
        <strong>This is a sample class.</strong> All names are invented. Try anything: nothing here
        is kept.
      </p>
      <button type="button" class="button" onClick={() => void leaveSample()}>
        Back to my class
      </button>
    </div>
  );
}
