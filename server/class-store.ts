import { type Kysely, sql, type Transaction } from 'kysely';
import type { ClassId } from '../core/ids.ts';
import { traceAfter } from '../core/sharing/follower.ts';
import {
  type ClassRecord,
  type EmptyRun,
  type KeptRecord,
  RECORD_LANES,
} from '../core/sharing/record.ts';
import { judge, type Refusal, type Rights, rightsAfter } from '../core/sharing/rights.ts';
import { parseRightsSaid } from '../core/sharing/rights-said.ts';
import { checking } from './checking.ts';
import type { Tables } from './database/schema.ts';
import { hashOf } from './identity.ts';

/** What is to be kept: all of it or none. */
export interface Append {
  readonly classId: ClassId;
  readonly records: readonly ClassRecord[];
  /** Lets a class begin; null when it goes on. */
  readonly pass: string | null;
}

/** What became of it. */
export type Appended =
  | { readonly seqs: readonly number[] }
  | { readonly refused: Refusal | 'full' | 'pass'; readonly id: string | null };

/** Some of a class, in order. */
export interface Read {
  /** How far the class has come. */
  readonly head: number;
  /** How far this goes. */
  readonly to: number;
  readonly records: readonly (KeptRecord | EmptyRun)[];
}

/** The shared classes of a database. Whatever fails otherwise rejects. */
export interface ClassStore {
  /**
   * Keeps several appends in one commit and resolves after it; what is refused takes nothing of the
   * others with it. `grown` are the classes that have more records than before.
   */
  appendAll(
    appends: readonly Append[],
    now: number,
  ): Promise<{ readonly outcomes: readonly Appended[]; readonly grown: readonly ClassId[] }>;
  /**
   * What comes after a place, up to another, on these lanes; the places of others are told as empty runs.
   * Null for a class never heard of.
   */
  read(
    classId: ClassId,
    after: number,
    lanes?: readonly ClassRecord['lane'][],
  ): Promise<Read | null>;
  /**
   * Whether a class has a place, with this trace up to there (core/sharing/follower.ts). Of a deleted class
   * nothing is left to tell by, and whoever asks is to hear that it is.
   */
  knows(classId: ClassId, place: number, trace: number): Promise<boolean>;
  /** Who may do what now; null for a class never heard of. */
  rightsOf(classId: ClassId): Promise<Rights | null>;
  /** How far each of these classes has come. */
  heads(classIds: readonly ClassId[]): Promise<ReadonlyMap<ClassId, number>>;
  /** Leaves what opens an invitation; false when there is no such invitation of the class. */
  deposit(classId: ClassId, invite: string, box: string): Promise<boolean>;
  /** What was left for an invitation; null when it is not there, used or too late. */
  fetch(invite: string, now: number): Promise<string | null>;
}

/** What a store needs to know. */
export interface ClassStoreSpec {
  readonly db: Kysely<Tables>;
  /** Whether rows are locked one by one; a database of one process needs it not. */
  readonly locksRows: boolean;
  /** A class takes at most so many bytes. */
  readonly mostBytes: number;
}

/** So many records are read at once. */
const BATCH = 200;

/** So much is counted for a record besides its body. */
const ROW_BYTES = 200;

/** So many signs at once; one record is always read. */
const BATCH_SIGNS = 256 * 1024;

/**
 * Classes kept in a database.
 *
 * Problem: who follows a class asks for what came after a place, so places must appear in order; a
 * sequence of the database does not do, since a later one can be seen before an earlier one is committed.
 * Method: every append locks the row of its class, takes the next places from it and commits; classes are
 * locked in the order of their ids, so that no two commits wait for each other. What a record may do is
 * judged by core/sharing, as every device judges it again.
 */
export function createClassStore({ db, locksRows, mostBytes }: ClassStoreSpec): ClassStore {
  const known = new Map<ClassId, { readonly seq: number; readonly rights: Rights | null }>();
  return {
    async appendAll(appends, now) {
      const news = new Map<ClassId, { seq: number; rights: Rights | null }>();
      const done = await db.transaction().execute(async (tx) => {
        const outcomes: Appended[] = [];
        const grown = new Set<ClassId>();
        const rows = await lockRows(tx, [...new Set(appends.map(({ classId }) => classId))].sort());
        for (const append of appends) {
          outcomes.push(await appendOne(tx, append, now, rows, news, grown));
        }
        const isEmptied = appends.some(({ records }) => records.some(isPacked));
        return { outcomes, grown: [...grown], isEmptied };
      });
      for (const [classId, one] of news) remember(classId, one);
      // What was deleted goes from the log of a database of one process, too.
      const isDeleted = done.isEmptied || [...news.values()].some(({ rights }) => rights?.gone);
      if (isDeleted && !locksRows) await sql`pragma wal_checkpoint(truncate)`.execute(db);
      return done;
    },
    async read(classId, after, lanes = RECORD_LANES) {
      const row = await db
        .selectFrom('class')
        .select('seq')
        .where('id', '=', classId)
        .executeTakeFirst();
      if (!row) return null;
      const found = await db
        .selectFrom('record')
        .selectAll()
        .where('class_id', '=', classId)
        .where('seq', '>', after)
        .where('seq', '<=', row.seq)
        .where('body', '<>', '')
        .where('lane', 'in', lanes)
        .orderBy('seq')
        .limit(BATCH)
        .execute();
      let signs = 0;
      const rows = found.filter(({ body }, place) => {
        signs += body.length;
        return place === 0 || signs <= BATCH_SIGNS;
      });
      const isLast = rows.length === found.length && found.length < BATCH;
      const to = isLast ? row.seq : (rows.at(-1)?.seq ?? row.seq);
      return { head: row.seq, to, records: await withRuns(classId, after, to, rows.map(keptOf)) };
    },
    async knows(classId, place, trace) {
      const row = await db
        .selectFrom('class')
        .select(['seq', 'gone'])
        .where('id', '=', classId)
        .executeTakeFirst();
      if (!row || place > row.seq) return false;
      return row.gone === 1 || (await tracesAt(db, classId, [place])).get(place) === trace;
    },
    rightsOf: (classId) => readRights(db, classId),
    async heads(classIds) {
      const heads = new Map<ClassId, number>();
      for (let from = 0; from < classIds.length; from += 500) {
        const rows = await db
          .selectFrom('class')
          .select(['id', 'seq'])
          .where('id', 'in', classIds.slice(from, from + 500))
          .execute();
        for (const { id, seq } of rows) heads.set(id, seq);
      }
      return heads;
    },
    async deposit(classId, invite, box) {
      const rights = await readRights(db, classId);
      const invitation = rights?.invitations.get(invite);
      if (!invitation || invitation.spent) return false;
      await db
        .insertInto('invite')
        .values({ id: invite, class_id: classId, box, until: invitation.until })
        .onConflict((conflict) => conflict.doNothing())
        .execute();
      return true;
    },
    async fetch(invite, now) {
      await db.deleteFrom('invite').where('until', '<=', now).execute();
      const row = await db
        .selectFrom('invite')
        .select('box')
        .where('id', '=', invite)
        .executeTakeFirst();
      return row?.box ?? null;
    },
  };

  /** With the places of which nothing is read, each run of them as one. */
  async function withRuns(
    classId: ClassId,
    after: number,
    to: number,
    kept: readonly KeptRecord[],
  ): Promise<readonly (KeptRecord | EmptyRun)[]> {
    const runs: { readonly seq: number; readonly to: number }[] = [];
    let place = after;
    for (const { seq } of [...kept, { seq: to + 1 }]) {
      if (seq > place + 1) runs.push({ seq: place + 1, to: seq - 1 });
      place = seq;
    }
    if (runs.length === 0) return kept;
    const traces = await tracesAt(
      db,
      classId,
      runs.map((run) => run.to),
    );
    const empty = runs.map((run) => ({ ...run, trace: traces.get(run.to) ?? 0 }));
    return [...kept, ...empty].sort((left, right) => left.seq - right.seq);
  }

  function remember(
    classId: ClassId,
    one: { readonly seq: number; readonly rights: Rights | null },
  ) {
    known.delete(classId);
    known.set(classId, one);
    const [oldest] = known.keys();
    if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest);
  }

  async function lockRows(tx: Transaction<Tables>, ids: readonly ClassId[]) {
    const query = tx.selectFrom('class').selectAll().where('id', 'in', ids).orderBy('id');
    const rows = await (locksRows ? query.forUpdate() : query).execute();
    return new Map(rows.map((row) => [row.id, { ...row }]));
  }

  async function appendOne(
    tx: Transaction<Tables>,
    { classId, records, pass }: Append,
    now: number,
    rows: Map<ClassId, ClassRow>,
    news: Map<ClassId, { seq: number; rights: Rights | null }>,
    grown: Set<ClassId>,
  ): Promise<Appended> {
    const row = rows.get(classId) ?? { ...NEW, id: classId };
    const isNew = !rows.has(classId);
    if (isNew && !(await hasRoom(tx, pass))) return { refused: 'pass', id: null };
    const there = await placesOf(
      tx,
      classId,
      records.map(({ id }) => id),
    );
    let rights = news.get(classId)?.rights ?? (await readRights(tx, classId, row.rights_seq));
    let { seq, rights_seq, bytes, trace } = row;
    const fresh: (KeptRecord & { readonly trace: number })[] = [];
    const seqs: number[] = [];
    for (const record of records) {
      const known = there.get(record.id) ?? fresh.find(({ id }) => id === record.id)?.seq;
      if (known !== undefined) {
        seqs.push(known);
        continue;
      }
      const outcome = await judge(classId, rights, record, now, checking);
      if ('refused' in outcome) return { refused: outcome.refused, id: record.id };
      bytes += record.body.length + ROW_BYTES;
      if (bytes > mostBytes) return { refused: 'full', id: null };
      ({ rights } = outcome);
      seq += 1;
      if (record.lane === 'rights') rights_seq = seq;
      trace = traceAfter(trace, record.id);
      fresh.push({ ...record, seq, at: now, trace });
      seqs.push(seq);
    }
    if (fresh.length === 0) return { seqs };
    const gone = rights?.gone ? 1 : 0;
    const after: ClassRow = { id: classId, seq, rights_seq, trace, bytes, gone };
    if (isNew) {
      const made = await tx
        .insertInto('class')
        .values(after)
        .onConflict((conflict) => conflict.doNothing())
        .returning('id')
        .execute();
      // Another server has just begun it: that one's commit counts, and this is asked again.
      if (made.length === 0) throw new Error('The class was begun elsewhere at the same time.');
      await usePass(tx, pass);
    } else {
      await tx.updateTable('class').set(after).where('id', '=', classId).execute();
    }
    await tx
      .insertInto('record')
      .values(fresh.map((record) => ({ class_id: classId, ...record })))
      .execute();
    await forgetInvitations(tx, fresh);
    if (gone === 1) await deleteAll(tx, classId);
    else await emptyPacked(tx, classId, fresh);
    rows.set(classId, (await lockRows(tx, [classId])).get(classId) ?? after);
    news.set(classId, { seq: rights_seq, rights });
    grown.add(classId);
    return { seqs };
  }

  /** Who may do what, from what is known and what came since. */
  async function readRights(
    from: Kysely<Tables>,
    classId: ClassId,
    at?: number,
  ): Promise<Rights | null> {
    const last =
      at ??
      (
        await from
          .selectFrom('class')
          .select('rights_seq')
          .where('id', '=', classId)
          .executeTakeFirst()
      )?.rights_seq ??
      0;
    const held = known.get(classId);
    if (held?.seq === last) return held.rights;
    const rows = await from
      .selectFrom('record')
      .selectAll()
      .where('class_id', '=', classId)
      .where('lane', '=', 'rights')
      .where('seq', '>', held?.seq ?? 0)
      .where('seq', '<=', last)
      .orderBy('seq')
      .execute();
    return rightsAfter(held?.rights ?? null, rows.map(keptOf));
  }
}

interface ClassRow {
  readonly id: ClassId;
  readonly seq: number;
  readonly rights_seq: number;
  readonly trace: number;
  readonly bytes: number;
  readonly gone: number;
}

/** A class of which nothing is kept yet. */
const NEW = { seq: 0, rights_seq: 0, trace: 0, bytes: 0, gone: 0 };

/** The rights of so many classes are held in memory. */
const MOST_KNOWN = 2000;

function keptOf({ class_id: _, trace: __, lane, ...row }: Tables['record']): KeptRecord {
  return { ...row, lane: lane as KeptRecord['lane'] };
}

async function placesOf(
  tx: Transaction<Tables>,
  classId: ClassId,
  ids: readonly string[],
): Promise<ReadonlyMap<string, number>> {
  const rows = await tx
    .selectFrom('record')
    .select(['id', 'seq'])
    .where('class_id', '=', classId)
    .where('id', 'in', ids)
    .execute();
  return new Map(rows.map(({ id, seq }) => [id, seq]));
}

async function hasRoom(tx: Transaction<Tables>, pass: string | null): Promise<boolean> {
  if (pass === null) return false;
  const row = await tx
    .selectFrom('pass')
    .select('classes_left')
    .where('hash', '=', hashOf(pass))
    .executeTakeFirst();
  return (row?.classes_left ?? 0) > 0;
}

async function usePass(tx: Transaction<Tables>, pass: string | null): Promise<void> {
  const used = await tx
    .updateTable('pass')
    .set((eb) => ({ classes_left: eb('classes_left', '-', 1) }))
    .where('hash', '=', hashOf(pass ?? ''))
    .where('classes_left', '>', 0)
    .returning('hash')
    .execute();
  if (used.length === 0) throw new Error('The pass was used up at the same time.');
}

/** What opened an invitation goes as soon as it was used or taken back. */
async function forgetInvitations(
  tx: Transaction<Tables>,
  records: readonly KeptRecord[],
): Promise<void> {
  const used = records.flatMap(({ lane, body }) => {
    const said = lane === 'rights' ? parseRightsSaid(body) : null;
    if (said?.says === 'member') return [said.invite];
    return said?.says === 'revoke' ? [said.device] : [];
  });
  if (used.length > 0) await tx.deleteFrom('invite').where('id', 'in', used).execute();
}

/** Traces of a class at places; those of which nothing is left are missing. */
async function tracesAt(
  from: Kysely<Tables>,
  classId: ClassId,
  places: readonly number[],
): Promise<ReadonlyMap<number, number>> {
  const rows = await from
    .selectFrom('record')
    .select(['seq', 'trace'])
    .where('class_id', '=', classId)
    .where('seq', 'in', places)
    .execute();
  return new Map([[0, 0], ...rows.map(({ seq, trace }) => [seq, trace] as const)]);
}

/** Whether a record says that earlier ones may go. */
function isPacked({ lane, body }: ClassRecord): boolean {
  return lane === 'rights' && parseRightsSaid(body)?.says === 'packed';
}

/** What was packed goes, if these are the records that were meant, and counts no more. */
async function emptyPacked(
  tx: Transaction<Tables>,
  classId: ClassId,
  fresh: readonly KeptRecord[],
): Promise<void> {
  for (const { lane, body, seq } of fresh) {
    const said = lane === 'rights' ? parseRightsSaid(body) : null;
    if (said?.says !== 'packed') continue;
    const last = said.runs.at(-1)?.[1] ?? 0;
    const there = (await tracesAt(tx, classId, [last])).get(last);
    if (last >= seq || there !== said.trace) continue;
    for (const [from, to] of said.runs) {
      await tx
        .updateTable('record')
        .set({ body: '', signature: '' })
        .where('class_id', '=', classId)
        .where('lane', '<>', 'rights')
        .where('seq', '>=', from)
        .where('seq', '<=', Math.min(to, last))
        .execute();
    }
    const left = await tx
      .selectFrom('record')
      .select(sql<number>`sum(length(body)) + count(*) * ${sql.lit(ROW_BYTES)}`.as('bytes'))
      .where('class_id', '=', classId)
      .executeTakeFirstOrThrow();
    const bytes = Number(left.bytes);
    await tx.updateTable('class').set({ bytes }).where('id', '=', classId).execute();
  }
}

/** Nothing of a deleted class stays but what was said of rights, so that devices believe that it is gone. */
async function deleteAll(tx: Transaction<Tables>, classId: ClassId): Promise<void> {
  await tx
    .deleteFrom('record')
    .where('class_id', '=', classId)
    .where('lane', '<>', 'rights')
    .execute();
  await tx.deleteFrom('invite').where('class_id', '=', classId).execute();
}
