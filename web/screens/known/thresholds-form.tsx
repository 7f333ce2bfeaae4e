import { useId, useState } from 'preact/hooks';
import { PUBLISHED_THRESHOLDS } from '../../../core/learners/thresholds.ts';
import { thresholds } from '../../state/thresholds.ts';
import { change } from '../../state/undo.ts';
import { parseThresholds } from './parse-thresholds.ts';

/** Where the words begin: the published shares, or hers. */
export function ThresholdsForm() {
  const now = thresholds.value;
  const isPublished =
    now.secure === PUBLISHED_THRESHOLDS.secure && now.shaky === PUBLISHED_THRESHOLDS.shaky;
  return (
    <details class="thresholds not-printed">
      <summary>
        Secure from {percent(now.secure)}%, shaky below {percent(now.shaky)}%
        {isPublished ? '' : ' (yours)'}
      </summary>
      <Fields key={`${now.secure} ${now.shaky}`} />
      <p class="quiet small">
        The usual shares are 80% and 60%, which is common practice. Secure means that even the low
        end of the likely range reaches its share. You may set your own.
      </p>
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
        else change(thresholds, read, 'Changed where the words begin.');
      }}
    >
      {field('Secure from', secure, setSecure)}
      {field('Shaky below', shaky, setShaky)}
      <button type="submit" class="button">
        Use these
      </button>
      <button
        type="button"
        class="button plain"
        onClick={() => change(thresholds, { ...PUBLISHED_THRESHOLDS }, 'Back to the usual shares.')}
      >
        Back to the usual ones
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
