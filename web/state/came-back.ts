import { effect } from '@preact/signals';
import { boolean } from 'valibot';
import { remembered } from '../device/remembered.ts';
import { store } from './open-class.ts';

/** Whether the browser lost what it kept and it came back, until she has put the notice of it away. */
export const cameBack = remembered('came-back', boolean(), false);

effect(() => {
  if (store.cameBack.value) cameBack.value = true;
});
