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
  safeParse,
  transform,
} from 'valibot';
import { ROW_RULES } from '../../core/checks/score-check.ts';
import { BLENDINGS } from '../../core/warm-up/standing.ts';
import { remembered } from '../device/remembered.ts';

/** How sounds are written: `/ā/` as in classrooms, or the phonetic alphabet. */
export const NOTATIONS = ['classroom', 'ipa'] as const;
/** How the stage looks, and how all other screens do. */
export const LOOKS = ['paper', 'dark', 'contrast'] as const;
/** The hand that points; the stage's touch side follows it. */
export const HANDS = ['right', 'left'] as const;

const fields = object({
  notation: optional(picklist(NOTATIONS), 'classroom'),
  /** Of the stage and the desk. */
  look: optional(picklist(LOOKS), 'paper'),
  /** Of all other screens. */
  pagesLook: optional(picklist(LOOKS), 'paper'),
  hand: optional(picklist(HANDS), 'right'),
  /** Milliseconds of one sweep. */
  sweepPace: optional(pipe(number(), minValue(200), maxValue(3000)), 700),
  blending: optional(picklist(BLENDINGS)),
  /** One sound at a time, as it was remembered before there were three ways. */
  successive: optional(boolean(), false),
  /** A small glimpse of what comes next, for her, on the stage. */
  glimpse: optional(boolean(), false),
  /** Whether children are called on, one for each card. */
  calling: optional(boolean(), false),
  /** How a skipped row of a short check counts: each of its items, or the row as one. */
  skippedRow: optional(picklist(ROW_RULES), 'each'),
});

const schema = pipe(
  fields,
  transform(({ successive, blending, ...others }) => ({
    ...others,
    blending: blending ?? (successive ? ('sounds' as const) : ('whole' as const)),
  })),
);

/** All settings. */
export type Settings = InferOutput<typeof schema>;

/** Her settings, remembered on this device. */
export const settings = remembered<Settings>('settings', schema, {
  notation: 'classroom',
  look: 'paper',
  pagesLook: 'paper',
  hand: 'right',
  sweepPace: 700,
  blending: 'whole',
  glimpse: false,
  calling: false,
  skippedRow: 'each',
});

/** Changes some settings; they are not part of undo, since each shows at once and is set back as easily. */
export function setSettings(some: Partial<Settings>): void {
  settings.value = { ...settings.peek(), ...some };
}

/** What another window of this browser changes holds here too: the desk sets the stage's look. */
globalThis.addEventListener?.('storage', ({ key, newValue }: StorageEvent) => {
  if (key !== 'sweepline.settings' || newValue === null) return;
  const read = safeParse(schema, JSON.parse(newValue));
  if (read.success && JSON.stringify(settings.peek()) !== JSON.stringify(read.output)) {
    settings.value = read.output;
  }
});
