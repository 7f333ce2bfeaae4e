import './first-time.css';
import { hasMet, meet } from '../state/met.ts';
import { FIRST_TIME, type FirstTimeThing } from '../wording/first-time.ts';
import { say } from './wording.ts';

/** One line about something, until she has put it away; then never again on this device. */
export function FirstTime({ of: thing }: { readonly of: FirstTimeThing }) {
  if (hasMet(thing)) return null;
  return (
    <p class="first-met" role="note">
      <span>{FIRST_TIME[thing]}</span>{' '}
      <button type="button" class="button plain" onClick={() => meet(thing)}>
        {say.firstTime.gotIt}
      </button>
    </p>
  );
}
