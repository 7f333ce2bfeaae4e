import type { ColumnType, Generated } from 'kysely';
import type { ClassId } from '../../core/ids.ts';

/** A whole number: PostgreSQL's bigint comes as text unless it is read (open-postgres.ts). */
type Whole = ColumnType<number, number, number>;

/** The tables, the same in SQLite and PostgreSQL. What the bodies of records say is sealed. */
export interface Tables {
  /** One row: with what the server signs its challenges. */
  readonly server: { readonly one: number; readonly secret: string };
  /** Passes with which classes can be begun, by the hash of the pass. */
  readonly pass: { readonly hash: string; readonly classes_left: Whole };
  /**
   * A shared class: how far it has come, how far when its rights changed last, and its trace
   * (core/sharing/follower.ts).
   */
  readonly class: {
    readonly id: ClassId;
    readonly seq: Whole;
    readonly rights_seq: Whole;
    readonly trace: Whole;
    readonly bytes: Whole;
    readonly gone: Whole;
  };
  readonly record: {
    readonly class_id: ClassId;
    readonly seq: number;
    readonly id: string;
    readonly writer: string;
    readonly count: number;
    readonly epoch: number;
    readonly lane: string;
    readonly body: string;
    readonly signature: string;
    readonly at: number;
    readonly trace: number;
  };
  /** What opens an invitation, until it is used or too late. */
  readonly invite: {
    readonly id: string;
    readonly class_id: ClassId;
    readonly box: string;
    readonly until: number;
  };
  readonly migration: { readonly version: Generated<number> };
}
