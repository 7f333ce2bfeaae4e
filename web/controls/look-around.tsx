import './look-around.css';
import { isLookedAt } from '../state/open-class.ts';
import { lookAround, sampleFailed, sampleShare, stopMaking } from '../state/sample.ts';

/** Offers a sample class where a screen has nothing to show yet; says how far it is made. */
export function LookAround() {
  const share = sampleShare.value;
  if (isLookedAt.value) return null;
  if (share !== null) {
    return (
      <p class="look-around" role="status">
        <progress value={share} aria-label="Making the sample class" /> Making up twelve school
        weeks …{' '}
        <button type="button" class="button plain" onClick={stopMaking}>
          Stop
        </button>
      </p>
    );
  }
  return (
    <p class="look-around">
      <button type="button" class="button plain" onClick={() => void lookAround()}>
        Look around with a sample class
      </button>{' '}
      <span class="quiet small">
        {sampleFailed.value
          ? 'The word list did not arrive, so it could not be made. Try again when you are online.'
          : 'Invented children and twelve weeks of warm-ups. It never mixes with yours.'}
      </span>
    </p>
  );
}
