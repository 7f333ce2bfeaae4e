import { effect } from '@preact/signals';
import { number, object } from 'valibot';
import { remembered } from '../device/remembered.ts';
import { store } from './open-class.ts';

const nothing = { putBack: 0, copied: 0, damaged: 0, twofold: 0 };

/** How many entries were found amiss, until she has put the notice of it away. */
export const amiss = remembered(
  'amiss',
  object({ putBack: number(), copied: number(), damaged: number(), twofold: number() }),
  nothing,
);

let counted = nothing;

effect(() => {
  const now = store.amiss.value;
  const before = amiss.peek();
  if (now === counted) return;
  amiss.value = {
    putBack: before.putBack + now.putBack - counted.putBack,
    copied: before.copied + now.copied - counted.copied,
    damaged: before.damaged + now.damaged - counted.damaged,
    twofold: before.twofold + now.twofold - counted.twofold,
  };
  counted = now;
});

/** She has seen the notice. */
export function putAmissAway(): void {
  amiss.value = nothing;
}
