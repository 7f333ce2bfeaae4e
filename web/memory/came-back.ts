import { effect } from '@preact/signals';
import { boolean } from 'valibot';
import { store } from './open-class.ts';
import { remembered } from './remembered.ts';

/** Whether the browser lost what it kept and it came back, until she has put the notice of it away. */
export const cameBack = remembered('came-back', boolean(), false);

effect(() => {
  if (store.cameBack.value) cameBack.value = true;
});
