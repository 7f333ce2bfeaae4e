import {
  boolean,
  type InferOutput,
  maxValue,
  minValue,
  number,
  object,
  optional,
  picklist,
  pipe,
} from 'valibot';
import { remembered } from './remembered.ts';

/** How sounds are written: `/ā/` as in classrooms, or the phonetic alphabet. */
export const NOTATIONS = ['classroom', 'ipa'] as const;
/** The stage's colours. */
export const LOOKS = ['paper', 'dark', 'contrast'] as const;
/** The hand that points; the stage's touch side follows it. */
export const HANDS = ['right', 'left'] as const;

const schema = object({
  notation: optional(picklist(NOTATIONS), 'classroom'),
  look: optional(picklist(LOOKS), 'paper'),
  hand: optional(picklist(HANDS), 'right'),
  /** Milliseconds of one sweep. */
  sweepPace: optional(pipe(number(), minValue(200), maxValue(3000)), 700),
  /** One sound at a time on the stage. */
  successive: optional(boolean(), false),
  /** A small glimpse of what comes next, for her, on the stage. */
  glimpse: optional(boolean(), false),
});

/** All settings. */
export type Settings = InferOutput<typeof schema>;

/** Her settings, remembered on this device. */
export const settings = remembered<Settings>('settings', schema, {
  notation: 'classroom',
  look: 'paper',
  hand: 'right',
  sweepPace: 700,
  successive: false,
  glimpse: false,
});

/** Changes some settings; they are not part of undo, since each shows at once and is set back as easily. */
export function setSettings(some: Partial<Settings>): void {
  settings.value = { ...settings.peek(), ...some };
}
