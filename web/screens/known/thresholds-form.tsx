import { useId, useState } from 'preact/hooks';
import { PUBLISHED_THRESHOLDS } from '../../../core/learners/thresholds.ts';
import { thresholds } from '../../state/thresholds.ts';
import { change } from '../../state/undo.ts';
import { parseThresholds } from './parse-thresholds.ts';
import { say } from './wording.ts';

/** Where the words begin: the published shares, or hers. */
export function ThresholdsForm() {
  const now = thresholds.value;
  const isPublished =
    now.secure === PUBLISHED_THRESHOLDS.secure && now.shaky === PUBLISHED_THRESHOLDS.shaky;
  return (
    <details class="thresholds not-printed">
      <summary>
        {say.thresholdsForm.secureFromShakyBelow(
          percent(now.secure),
          percent(now.shaky),
          isPublished ? '' : say.thresholdsForm.yours,
        )}
      </summary>
      <Fields key={`${now.secure} ${now.shaky}`} />
      <p class="quiet small">{say.thresholdsForm.theUsualShares}</p>
    </details>
  );
}

function Fields() {
  const now = thresholds.value;
  const [secure, setSecure] = useState(percent(now.secure));
  const [shaky, setShaky] = useState(percent(now.shaky));
  const [problem, setProblem] = useState('');
  const id = useId();
  const describedBy = problem === '' ? undefined : `${id}-problem`;
  const field = (name: string, value: string, set: (text: string) => void) => (
    <label>
      {name}{' '}
      <input
        type="text"
        inputMode="numeric"
        size={3}
        value={value}
        aria-describedby={describedBy}
        onInput={(event) => set(event.currentTarget.value)}
      />{' '}
      %
    </label>
  );
  return (
    <form
      class="thresholds-fields"
      onSubmit={(event) => {
        event.preventDefault();
        const read = parseThresholds(secure, shaky);
        if ('problem' in read) setProblem(read.problem);
        else change(thresholds, read, say.thresholdsForm.changedWhereTheWords);
      }}
    >
      {field(say.thresholdsForm.secureFrom, secure, setSecure)}
      {field(say.thresholdsForm.shakyBelow, shaky, setShaky)}
      <button type="submit" class="button">
        {say.thresholdsForm.useThese}
      </button>
      <button
        type="button"
        class="button plain"
        onClick={() =>
          change(thresholds, { ...PUBLISHED_THRESHOLDS }, say.thresholdsForm.backToTheUsual)
        }
      >
        {say.thresholdsForm.backToTheUsualOnes}
      </button>
      <p id={`${id}-problem`} class="known-problem" role="alert">
        {problem}
      </p>
    </form>
  );
}

function percent(share: number): string {
  return `${Math.round(share * 100)}`;
}
