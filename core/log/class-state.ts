import type { CheckForm } from '../checks/check-form.ts';
import type { Drill } from '../drills/drill.ts';
import {
  type CheckId,
  type ChildId,
  type ClassId,
  type DrillId,
  type EventId,
  type GroupId,
  groupId,
  type PapersId,
} from '../ids.ts';
import type { Accent } from '../language/accent/accent.ts';
import type { CardId } from '../language/card-id.ts';
import type { TeacherDecision } from '../words/teacher-rules.ts';
import type { ClassCalendar } from './class-calendar.ts';
import type { EventBodies, ItemReading, NameOrder, Part, Slip } from './event.ts';
import type { Facts } from './facts.ts';
import type { GroupPlace } from './group-place.ts';
import type { PapersRecord } from './papers-record.ts';

/** The id of the group that all children of a class are in; it is always there. */
export const WHOLE_CLASS = groupId('whole-class');

/** A class as its events have made it. Equal logs give equal classes, in whatever order they came. */
export interface ClassState {
  readonly id: ClassId;
  /** What she calls the class; empty until she has named it. */
  readonly name: string;
  readonly archived: boolean;
  /** How the names of the children are ordered, everywhere. */
  readonly namesBy: NameOrder;
  /** How the class speaks. */
  readonly accent: Accent;
  /** By id: the whole class, then the small groups as they were made, removed ones included. */
  readonly groups: ReadonlyMap<GroupId, Group>;
  /** By id, as they were entered, removed ones included. */
  readonly children: ReadonlyMap<ChildId, Child>;
  /** What the devices are called that the class is shared with, by what their events say in `by`. */
  readonly devices: ReadonlyMap<string, string>;
  /** By id, as they were begun. */
  readonly drills: ReadonlyMap<DrillId, DrillRecord>;
  /** Drills that she took out of the record, by id, as they were begun: they count nowhere, and can be put back. */
  readonly discarded: ReadonlyMap<DrillId, DrillRecord>;
  /** Short checks by id, as they were begun. */
  readonly checks: ReadonlyMap<CheckId, CheckRecord>;
  /** Piles of spelling papers by id, as they were begun. */
  readonly papers: ReadonlyMap<PapersId, PapersRecord>;
  readonly calendar: ClassCalendar;
  /** Oldest first. */
  readonly notes: readonly Note[];
  /** Her own lines on the pages she hands on, by `lineKey`. */
  readonly lines: ReadonlyMap<string, string>;
  /** Her decisions about words and sounds, oldest first: these are a class's `TeacherRules`. */
  readonly decisions: readonly Decision[];
  /** The greatest `at` of all events: what `tick` asks for; 0 for none. */
  readonly last: number;
  /** The events themselves, sorted; for replay only. */
  readonly facts: Facts;
}

/** The whole class or a small group. */
export interface Group {
  readonly id: GroupId;
  readonly name: string;
  readonly removed: boolean;
  /** Null until it was said where the group stands. */
  readonly standing: GroupPlace | null;
  /** Its place among the small groups of a day, counted from 0; null when none was given. */
  readonly place: number | null;
}

/** A child; what has been noted of it stays whichever group it is in. */
export interface Child {
  readonly id: ChildId;
  readonly name: string;
  /** Its small group; null for none. */
  readonly group: GroupId | null;
  readonly removed: boolean;
  /** Its seat, counted from 0; null when none was given. */
  readonly place: number | null;
}

/** A drill that was begun and what has come of it. All lists are oldest first. */
export interface DrillRecord {
  readonly id: DrillId;
  /** The events that began it, by id: with them undone it is out of the record. */
  readonly begunBy: readonly EventId[];
  readonly groupId: GroupId;
  /** `YYYY-MM-DD`. */
  readonly day: string;
  /** Its plan by now. */
  readonly drill: Drill;
  /** The plans it had before, oldest first: of a drill whose plan was changed while it ran. */
  readonly earlier: readonly EarlierPlan[];
  /** When it was begun. */
  readonly at: number;
  /** What has come up; the last is where the drill stands. */
  readonly shown: readonly Happening[];
  readonly calls: readonly (Happening & { readonly child: ChildId })[];
  readonly marks: readonly Mark[];
  readonly corrections: readonly Happening[];
  /** Null while it can be resumed. */
  readonly ended: { readonly at: number; readonly complete: boolean } | null;
}

/** A plan that was changed, and when. */
export interface EarlierPlan {
  readonly drill: Drill;
  readonly until: number;
}

/** Something at a moment of a drill; `id` is the event's, with which it is undone. */
export interface Happening {
  readonly id: EventId;
  readonly at: number;
  readonly part: Part;
  /** Counted from 0 within the part. */
  readonly place: number;
  /** The count of the warm-up there and then, of a mark and of what was noted late; see `isBefore`. */
  readonly count?: number;
}

/** What broke, with all that was said of it since. */
export interface Mark extends Happening {
  readonly cards: readonly CardId[];
  /** Counted from 1; null when it was not said which. */
  readonly broke: number | null;
  readonly heard: Slip | null;
  /** Null for the whole class. */
  readonly child: ChildId | null;
}

/** A short check that was begun and what has come of it. */
export interface CheckRecord {
  readonly id: CheckId;
  readonly child: ChildId;
  /** `YYYY-MM-DD`. */
  readonly day: string;
  readonly form: CheckForm;
  /** How long it goes, in seconds; null when it is untimed. */
  readonly limit: number | null;
  /** When it was begun. */
  readonly at: number;
  /** What was marked, by item counted from 0; an item that is not there was not marked. */
  readonly marks: ReadonlyMap<number, ItemReading>;
  /** The event that marked last, by id, with which it is undone; null when nothing was marked. */
  readonly markedLast: EventId | null;
  /** Null while it goes on. */
  readonly ended: { readonly reached: number; readonly seconds: number | null } | null;
}

/** Her own line; `id` is the event's. */
export interface Note {
  readonly id: EventId;
  readonly at: number;
  readonly drillId: DrillId | null;
  readonly groupId: GroupId;
  readonly text: string;
}

/** Under which her line stands: one for each page and the child or group that it is about. */
export function lineKey({ page, about }: Pick<EventBodies['wrote'], 'page' | 'about'>): string {
  return `${page} ${about}`;
}

/** A decision and the id of its event, with which it is undone. */
export interface Decision extends TeacherDecision {
  readonly id: EventId;
}
