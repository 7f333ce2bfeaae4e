import { signal } from '@preact/signals';
import {
  boolean,
  type InferOutput,
  integer,
  maxValue,
  minValue,
  number,
  object,
  optional,
  picklist,
  pipe,
  string,
} from 'valibot';
import { CHECK_KINDS } from '../../../core/checks/check-form.ts';
import { RING_COUNTS } from '../../../print/binder.ts';
import { TURNS } from '../../../print/duplex.ts';
import { PAPERS } from '../../../print/paper.ts';
import { HOME_LANGUAGES } from '../../../print/sheets/home-words.ts';
import { SLIDE_FORMATS } from '../../../print/slide.ts';
import { SLIDE_BLENDINGS, SLIDE_CLICKS } from '../../../print/slide-notes.ts';
import { remembered } from '../../device/remembered.ts';
import { THINGS } from './print-things.ts';

/** Which cards: all taught, words known by sight, new this week, those of some steps, today's board, the board on the table, none but her own. */
export const SOURCES = ['taught', 'sight', 'newest', 'steps', 'today', 'table', 'own'] as const;
/** Which words: those that show what is new, or what she looked for last. */
const LISTS = ['new', 'found'] as const;
/** In place of a child: each child of the class. */
export const EACH = 'each';
/** What slides are saved for: programs that read Office Open XML, or OpenDocument. */
const PROGRAMS = ['pptx', 'odp'] as const;
/** How many words a list has: half a sheet of short ones, one, two. */
export const LENGTHS = [28, 56, 112] as const;

const step = pipe(number(), integer(), minValue(1), maxValue(999));

/** What choices may be, wherever they are remembered. */
export const choicesSchema = object({
  kind: optional(picklist(THINGS), 'index'),
  source: optional(picklist(SOURCES), 'taught'),
  from: optional(step, 1),
  to: optional(step, 10),
  paper: optional(picklist(PAPERS), 'letter'),
  rings: optional(picklist(RING_COUNTS), 3),
  pictures: optional(boolean(), false),
  grey: optional(boolean(), false),
  backs: optional(boolean(), false),
  turn: optional(picklist(TURNS), 'long'),
  own: optional(string(), ''),
  blank: optional(pipe(number(), integer(), minValue(0), maxValue(200)), 0),
  /** The child that a sheet is for, by id; empty for the whole group, `EACH` for a page for each child. */
  child: optional(string(), ''),
  check: optional(picklist(CHECK_KINDS), 'letter-sounds'),
  timed: optional(boolean(), true),
  list: optional(picklist(LISTS), 'new'),
  length: optional(picklist(LENGTHS), 56),
  blending: optional(picklist(SLIDE_BLENDINGS), 'whole'),
  clicks: optional(picklist(SLIDE_CLICKS), 'line'),
  format: optional(picklist(SLIDE_FORMATS), '16:9'),
  program: optional(picklist(PROGRAMS), 'pptx'),
  /** The language of home practice. */
  language: optional(picklist(HOME_LANGUAGES), 'english'),
  /** How often she asked for other words. */
  draw: optional(pipe(number(), integer(), minValue(0)), 0),
});

/** What she last chose to print, and how. */
export type Choices = InferOutput<typeof choicesSchema>;

/** Her choices, remembered on this device. */
export const choices = remembered<Choices>('print', choicesSchema, {
  kind: 'index',
  source: 'taught',
  from: 1,
  to: 10,
  paper: 'letter',
  rings: 3,
  pictures: false,
  grey: false,
  backs: false,
  turn: 'long',
  own: '',
  blank: 0,
  child: '',
  check: 'letter-sounds',
  timed: true,
  list: 'new',
  length: 56,
  blending: 'whole',
  clicks: 'line',
  format: '16:9',
  program: 'pptx',
  language: 'english',
  draw: 0,
});

/** Changes some choices; each shows at once and is set back as easily. */
export function choose(some: Partial<Choices>): void {
  choices.value = { ...choices.peek(), ...some };
}

/** How many pages of the preview are drawn. */
export const previewed = signal(4);
