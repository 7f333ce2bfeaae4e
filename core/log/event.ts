import type { CheckForm } from '../checks/check-form.ts';
import type { ITEM_MARKS } from '../checks/score-check.ts';
import type { Drill } from '../drills/drill.ts';
import type { CheckId, ChildId, ClassId, DrillId, EventId, GroupId, PapersId } from '../ids.ts';
import type { Accent } from '../language/accent/accent.ts';
import type { CardId } from '../language/card-id.ts';
import type { Phoneme } from '../language/phonemes.ts';
import type { TeacherDecision } from '../words/teacher-rules.ts';
import type { GroupPlace } from './group-place.ts';

/**
 * Something that happened in a class. Events are only ever added: nothing is
 * overwritten, so that logs kept on two devices are merged by taking both.
 * `kind` and `body` are what they are here, or what a newer version writes:
 * `understand` (understand.ts) tells.
 */
export interface LogEvent {
  /** Unique for ever, made by the caller; two events with one id are the same event. */
  readonly id: EventId;
  readonly classId: ClassId;
  /** When, by the log's clock (clock.ts): whole milliseconds that never go backwards. */
  readonly at: number;
  /** The device that wrote it. */
  readonly by: string;
  readonly kind: string;
  readonly body: unknown;
}

/** An event of a kind we know, its body checked. */
export type KnownEvent = Omit<LogEvent, 'kind' | 'body'> & EventSpec;

/** What happened, before it is stamped with id, class, time and device. */
export type EventSpec = {
  readonly [Kind in EventKind]: { readonly kind: Kind; readonly body: EventBodies[Kind] };
}[EventKind];

/** A known event of one kind. */
export type EventOf<Kind extends EventKind> = Extract<KnownEvent, { readonly kind: Kind }>;

/** What the log says of one drill. */
export type DrillEvent = EventOf<
  'begun' | 'replanned' | 'shown' | 'called' | 'marked' | 'amended' | 'corrected' | 'ended'
>;

/** What the log says of one short check. */
export type CheckEvent = EventOf<'check-begun' | 'check-marked' | 'check-ended'>;

/** What the log says of one pile of spelling papers. */
export type PapersEvent = EventOf<'papers-begun' | 'papers-read' | 'papers-changed'>;

/** What the log says of the days of a class. */
export type CalendarEvent = EventOf<'no-school' | 'away'>;

/** Every kind of event we know. */
export const EVENT_KINDS = [
  'set',
  'begun',
  'replanned',
  'shown',
  'called',
  'marked',
  'amended',
  'corrected',
  'ended',
  'check-begun',
  'check-marked',
  'check-ended',
  'papers-begun',
  'papers-read',
  'papers-changed',
  'no-school',
  'away',
  'noted',
  'wrote',
  'decided',
  'undone',
  'dated',
] as const;
export type EventKind = (typeof EVENT_KINDS)[number];

/** The parts of a drill, in the order in which they are run. */
export const PARTS = ['visual', 'auditory', 'blending'] as const;
export type Part = (typeof PARTS)[number];

/** The pages that a teacher hands on: to a meeting, to a family, to the next teacher. */
export const PAGES = ['meeting', 'family', 'handover'] as const;

/** What was heard instead; one of another sound says which, and one letter of a cluster which letter. */
export const SLIPS = [
  'letter-name',
  'left-out',
  'added-vowel',
  'swapped',
  'another-word',
  'sounded-out',
  'nothing',
  'other',
] as const;
export type Slip =
  | { readonly kind: (typeof SLIPS)[number] }
  | { readonly kind: 'phoneme'; readonly sound: Phoneme }
  /** Of a card of several sounds: the letter that broke, by its own card's id. */
  | { readonly kind: 'letter'; readonly card: CardId };

/** One moment of a drill: `place` counts from 0 within the part (a card, a sound, a flip). */
export interface DrillPlace {
  readonly drillId: DrillId;
  readonly part: Part;
  readonly place: number;
}

/** What each kind of event says. */
export interface EventBodies {
  /** A value of the class, a group or a child; of several, the last one holds. */
  readonly set: Setting;
  /** A drill was begun; it is kept whole, so that it can be resumed and looked back at. */
  readonly begun: {
    readonly drillId: DrillId;
    /** A group's id, or `WHOLE_CLASS`. */
    readonly groupId: GroupId;
    /** The day in the classroom, `YYYY-MM-DD`. */
    readonly day: string;
    readonly drill: Drill;
  };
  /** Its plan was changed while it ran; what came up before was of the plan before. */
  readonly replanned: { readonly drillId: DrillId; readonly drill: Drill };
  /**
   * A card, sound or word came up. Taken back (`undone`) when it was skipped. `count` is the count of the
   * warm-up when it came up, said only where it is noted later than that.
   */
  readonly shown: DrillPlace & { readonly count?: number };
  /** A child was called on to read what is up. */
  readonly called: DrillPlace & { readonly child: ChildId };
  /** Something broke. */
  readonly marked: DrillPlace & {
    /** The cards that lay there, by id. */
    readonly cards: readonly CardId[];
    /** The card that broke, counted from 1; null when it was not said which. */
    readonly broke: number | null;
    /** What was heard instead; null when it was not said. */
    readonly heard: Slip | null;
    /** The child; null for the whole class. */
    readonly child: ChildId | null;
    /** The count of the warm-up where it was marked; not said of what was marked afterwards. */
    readonly count?: number;
  };
  /** Something said of a mark afterwards; of several on one field, the last one holds. */
  readonly amended: Amendment;
  /** It was corrected: my turn, our turn, your turn. */
  readonly corrected: DrillPlace;
  /** The drill ended; `complete` when nothing was left. */
  readonly ended: { readonly drillId: DrillId; readonly complete: boolean };
  /** A child began a short check; its form is kept whole, so that it can be resumed and looked back at. */
  readonly 'check-begun': {
    readonly checkId: CheckId;
    readonly child: ChildId;
    /** The day in the classroom, `YYYY-MM-DD`. */
    readonly day: string;
    readonly form: CheckForm;
    /** How long it goes, in seconds; null when it is untimed. */
    readonly limit: number | null;
  };
  /**
   * How an item of a check (counted from 0) was read, or so many from that one on, as when a row was
   * skipped; of several on one item, the last holds.
   */
  readonly 'check-marked': ItemReading & {
    readonly checkId: CheckId;
    readonly item: number;
    readonly count?: number;
  };
  /** A check ended; of several, the last holds. */
  readonly 'check-ended': {
    readonly checkId: CheckId;
    /** How many items were reached, counted from the first. */
    readonly reached: number;
    /** How long it took; null when it was untimed. */
    readonly seconds: number | null;
  };
  /** Words were said and written; the pile of papers keeps its words whole, so that it can be read for ever. */
  readonly 'papers-begun': {
    readonly papersId: PapersId;
    /** A group's id, or `WHOLE_CLASS`. */
    readonly groupId: GroupId;
    /** The day they were written, `YYYY-MM-DD`; null for none. */
    readonly day: string | null;
    readonly words: readonly PapersWord[];
  };
  /** What a child wrote for a word (counted from 0) of a pile; of several, the last holds. */
  readonly 'papers-read': {
    readonly papersId: PapersId;
    readonly child: ChildId;
    readonly word: number;
    readonly answer: PaperAnswer;
  };
  /** The day of a pile or one of its words was set right later; of several, the last holds. */
  readonly 'papers-changed': { readonly papersId: PapersId; readonly change: PapersChange };
  /** There is no school from one day to another, both among them; or there is after all. Of several on the same days, the last holds. */
  readonly 'no-school': { readonly first: string; readonly last: string; readonly holds: boolean };
  /** A child was away on a day, or had come after all; of several, the last holds. */
  readonly away: { readonly child: ChildId; readonly day: string; readonly away: boolean };
  /** Her own line, about a drill or about the group at large. */
  readonly noted: {
    readonly drillId: DrillId | null;
    readonly groupId: GroupId;
    readonly text: string;
  };
  /** Her own line on a page that she hands on; of several on one page, the last holds. */
  readonly wrote: {
    readonly page: (typeof PAGES)[number];
    /** The child's id, or the group's. */
    readonly about: ChildId | GroupId;
    readonly text: string;
  };
  /** What she decided about a word or its sounds. */
  readonly decided: TeacherDecision;
  /** Another event, earlier than this one, is taken as if it had not happened. */
  readonly undone: { readonly event: EventId };
  /**
   * When another event really was, at the latest: it bears a time far ahead, stamped by a clock that was
   * wrong (ahead.ts). The earliest time that is said of an event holds; a later one than it bears changes
   * nothing.
   */
  readonly dated: { readonly event: EventId; readonly at: number };
}

/** A word that was said: its cards by id, and where syllables after the first begin. */
export interface PapersWord {
  readonly word: string;
  readonly cards: readonly CardId[];
  readonly breaks: readonly number[];
}

/**
 * A change of a pile: the day its words were written, or a word, counted from 0. One more than there are
 * is added; null takes a word out and leaves the places of the others as they are.
 */
export type PapersChange =
  | { readonly of: 'day'; readonly day: string | null }
  | { readonly of: 'word'; readonly word: number; readonly said: PapersWord | null };

/**
 * What stood on a paper: the letters as they were written (none for a blank; `isWord` when they are a
 * word that children know; `meant` the cards, counted from 1, whose sound the teacher says was heard,
 * though the letters say another), or only which cards broke, counted from 1; the child was away; or it
 * was not read after all.
 */
export type PaperAnswer =
  | {
      readonly kind: 'wrote';
      readonly text: string;
      readonly isWord?: boolean;
      readonly meant?: readonly number[];
    }
  | { readonly kind: 'broke'; readonly cards: readonly number[] }
  | { readonly kind: 'absent' }
  | { readonly kind: 'unread' };

/** How one item of a check was read. */
export interface ItemReading {
  /** `right` takes an earlier mark away. */
  readonly outcome: 'right' | (typeof ITEM_MARKS)[number];
  /** Of a wrong one: the cards that broke, counted from 1; empty when it was not said which. */
  readonly broke: readonly BrokenAt[];
}

/** A card of an item that broke, and what was heard instead; null when it was not said. */
export interface BrokenAt {
  readonly card: number;
  readonly heard: Slip | null;
}

/** How the names of children are ordered: by name, by seat, or as they were typed. */
export const NAME_ORDERS = ['name', 'seat', 'typed'] as const;
export type NameOrder = (typeof NAME_ORDERS)[number];

/** A value that can be set. Of a removed group or child everything is kept. */
export type Setting =
  | SettingOf<
      'class',
      ClassId,
      {
        readonly name: string;
        readonly archived: boolean;
        readonly namesBy: NameOrder;
        /** How the class speaks; American as the list has it until it was said otherwise. */
        readonly accent: Accent;
      }
    >
  | SettingOf<
      'group',
      GroupId,
      {
        readonly name: string;
        readonly removed: boolean;
        readonly standing: GroupPlace;
        /** Its place among the small groups of a day, counted from 0. */
        readonly place: number;
      }
    >
  | SettingOf<
      'child',
      ChildId,
      {
        /** First name, nickname or initials; nothing more is ever asked. */
        readonly name: string;
        /** A small group's id; null when the child is in none. */
        readonly group: GroupId | null;
        readonly removed: boolean;
        /** Its seat, counted from 0. */
        readonly place: number;
      }
    >
  /** A device that the class is shared with, by what its events say in `by`. */
  | SettingOf<'device', string, { readonly name: string }>;

type SettingOf<Of extends string, Id, Fields> = {
  readonly [Field in keyof Fields]: {
    readonly of: Of;
    readonly id: Id;
    readonly field: Field;
    readonly value: Fields[Field];
  };
}[keyof Fields];

/** `mark` is the id of the `marked` event, in the same drill. */
export type Amendment = { readonly drillId: DrillId; readonly mark: EventId } & (
  | { readonly field: 'broke'; readonly value: number | null }
  | { readonly field: 'heard'; readonly value: Slip | null }
  | { readonly field: 'child'; readonly value: ChildId | null }
);
