import './whereabouts.css';
import { linkTo } from '../state/route.ts';
import { sharing } from '../state/sharing.ts';
import { say } from './wording.ts';

/**
 * A quiet sign of how far what was recorded has come. A class that is not shared has none; nothing ever
 * speaks up by itself.
 */
export function Whereabouts() {
  const state = sharing.value?.state;
  if (!state) return null;
  const { where } = state;
  return (
    <a class={`whereabouts ${where}`} href={linkTo('share')}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <circle cx="10" cy="10" r="7" />
        {where === 'everywhere' && <path d="M6.5 10.5l2.4 2.4 4.8-5.4" />}
      </svg>
      <span role="status">{said[where]}</span>
    </a>
  );
}

const said = {
  here: say.whereabouts.onThisDevice,
  'on-its-way': say.whereabouts.onItsWay,
  everywhere: say.whereabouts.withYourOtherDevices,
  closed: say.whereabouts.noLongerSharedHere,
} as const;
