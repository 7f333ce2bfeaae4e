import { groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Phoneme } from '../language/phonemes.ts';

/** The two small groups of the sample class; their names are invented. */
export const MAPLE = groupId('sample-maple');
export const WILLOW = groupId('sample-willow');

/** What a child of the sample class has trouble with, so that its pages have something to say. */
export type SampleTrouble =
  /** Says another sound for a card, so often. */
  | {
      readonly kind: 'sound';
      readonly on: readonly CardId[];
      readonly says: Phoneme;
      readonly often: number;
    }
  /** Drops the second letter of a cluster, so often. */
  | { readonly kind: 'second-of-cluster'; readonly often: number }
  /** Writes it without its silent e. */
  | { readonly kind: 'silent-e'; readonly often: number };

/** An invented child: its name, its group and how it reads. */
export interface SampleChild {
  readonly name: string;
  readonly group: typeof MAPLE | typeof WILLOW | null;
  /** How often it misses a card that is quite new, and one that it has known for weeks. */
  readonly slips: { readonly fresh: number; readonly known: number };
  readonly troubles: readonly SampleTrouble[];
  /** The share of days on which it is away. */
  readonly away: number;
}

const SURE = { fresh: 0.06, known: 0.01 };
const STEADY = { fresh: 0.14, known: 0.03 };
const SLOW = { fresh: 0.3, known: 0.07 };
const EI: SampleTrouble = { kind: 'sound', on: ['i=IH'], says: 'EH', often: 0.55 };
const CLUSTER: SampleTrouble = { kind: 'second-of-cluster', often: 0.45 };
const NO_E: SampleTrouble = { kind: 'silent-e', often: 0.6 };

function child(
  name: string,
  group: SampleChild['group'],
  slips: SampleChild['slips'],
  troubles: readonly SampleTrouble[] = [],
  away = 0.03,
): SampleChild {
  return { name, group, slips, troubles, away };
}

/** The children of the sample class. All are invented; so is what they read and write. */
export const SAMPLE_CHILDREN: readonly SampleChild[] = [
  child('Anouk', null, SURE),
  child('Bao', MAPLE, STEADY, [CLUSTER]),
  child('Celeste', null, STEADY),
  child('Dev', WILLOW, SLOW, [EI]),
  child('Emeka', MAPLE, SURE, [NO_E]),
  child('Farah', null, STEADY, [CLUSTER]),
  child('Gideon', WILLOW, SLOW, [EI], 0.2),
  child('Hana', MAPLE, SURE),
  child('Ilse', null, STEADY, [NO_E]),
  child('Jamal', null, STEADY, [{ kind: 'sound', on: ['th=TH', 'th=DH'], says: 'F', often: 0.35 }]),
  child('Kiri', WILLOW, SLOW, [{ kind: 'sound', on: ['b=B'], says: 'D', often: 0.3 }]),
  child('Lucía', MAPLE, STEADY, [CLUSTER]),
  child('Mateo', null, SURE),
  child('Niamh', WILLOW, SLOW, [CLUSTER]),
  child('Otto', null, STEADY),
  child('Priya', MAPLE, SURE),
  child('Rafi', null, STEADY, [EI]),
  child('Suki', null, STEADY, [], 0.1),
];
