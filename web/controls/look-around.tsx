import './look-around.css';
import { isLookedAt } from '../state/open-class.ts';
import { lookAround, sampleFailed, sampleShare, stopMaking } from '../state/sample.ts';
import { say } from './wording.ts';

/** Offers a sample class where a screen has nothing to show yet; says how far it is made. */
export function LookAround() {
  const share = sampleShare.value;
  if (isLookedAt.value) return null;
  if (share !== null) {
    return (
      <p class="look-around" role="status">
        <progress value={share} aria-label={say.lookAround.makingTheSampleClass} />{' '}
        {say.lookAround.makingUpTwelveSchool}{' '}
        <button type="button" class="button plain" onClick={stopMaking}>
          {say.lookAround.stop}
        </button>
      </p>
    );
  }
  return (
    <p class="look-around">
      <button type="button" class="button plain" onClick={() => void lookAround()}>
        {say.lookAround.lookAround}
      </button>{' '}
      <span class="quiet small">
        {sampleFailed.value
          ? say.lookAround.theWordListDid
          : say.lookAround.inventedChildrenAndTwelve}
      </span>
    </p>
  );
}
