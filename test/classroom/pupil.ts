import type { ChildId } from '../../core/ids.ts';
import type { Place } from '../../core/language/correspondence.ts';
import type { Chances } from './chances.ts';

/** An invented pupil, who changes with practice and with time. */
export interface Pupil {
  readonly name: ChildId;
  /** The true chance of reading a card correctly on that day: alone, or in a place of a word. */
  readonly chance: (card: string, day: number, place: Place | null, clustered: boolean) => number;
  /** The same on a day as good as most, where days differ. */
  readonly usually?: Pupil['chance'];
  readonly practice: (card: string, day: number, amount: number) => void;
}

/** What a truth makes pupils from: `difficulties` are the cards' own, for all pupils, on a scale of about ±1. */
export interface PupilSpec {
  readonly name: ChildId;
  readonly difficulties: ReadonlyMap<string, number>;
  readonly draw: Chances;
}

/** A hidden truth: how pupils are, learn and forget. */
export type Truth = (spec: PupilSpec) => Pupil;
