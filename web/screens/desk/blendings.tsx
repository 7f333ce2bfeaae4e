import './blendings.css';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { BLENDINGS } from '../../../core/warm-up/standing.ts';
import { blendingNames } from '../../controls/controls.tsx';
import { setBlending } from '../../warm-up/acts.ts';
import { say } from './wording.ts';

/** How rows are blended; the stage follows at once. */
export function Blendings({ now: { blending } }: { readonly now: Running }) {
  return (
    <fieldset class="desk-box desk-blendings">
      <legend>{say.blendings.blending(<kbd class="key">O</kbd>)}</legend>
      {BLENDINGS.map((each) => (
        <label key={each} class="option">
          <input
            type="radio"
            name={say.blendings.blendingAlone}
            checked={each === blending}
            onChange={() => setBlending(each)}
          />
          <span>{blendingNames[each]}</span>
        </label>
      ))}
    </fieldset>
  );
}
