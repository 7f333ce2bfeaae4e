import { string } from 'valibot';
import { remembered } from '../../device/remembered.ts';

/** The text she put in last; it is remembered on this device and goes nowhere else. */
export const draft = remembered('text', string(), '');
