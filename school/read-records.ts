import { existsSync } from 'node:fs';
import sqlite from 'node-sqlite3-wasm';
import { type ClassId, isClassId } from '../core/ids.ts';
import { isKept, type KeptRecord } from '../core/sharing/record.ts';
import { openPostgres } from '../server/database/open-postgres.ts';

/** The records of every class, by class and in order. */
export type RecordsByClass = ReadonlyMap<ClassId, readonly KeptRecord[]>;

/**
 * Reads a copy of the embedded database (a file that `--backup` made) or a PostgreSQL database by its address.
 * Nothing is written there. Throws a sentence when it cannot be read.
 */
export async function readRecords(from: string): Promise<RecordsByClass> {
  return sorted(/^postgres(ql)?:/.test(from) ? await ofPostgres(from) : ofFile(from));
}

async function ofPostgres(url: string): Promise<readonly unknown[]> {
  const db = openPostgres(url);
  try {
    return await db.selectFrom('record').selectAll().orderBy('class_id').orderBy('seq').execute();
  } finally {
    await db.destroy();
  }
}

function ofFile(file: string): readonly unknown[] {
  if (!existsSync(file)) throw new Error(`There is no “${file}”.`);
  if (existsSync(`${file}.lock`)) {
    throw new Error(`“${file}” is in use by a server. Name a copy that --backup made.`);
  }
  const db = new sqlite.Database(file, { readOnly: true });
  try {
    return db.all('select * from record order by class_id, seq');
  } catch {
    throw new Error(`“${file}” is not a copy of a Sweepline database.`);
  } finally {
    db.close();
  }
}

function sorted(rows: readonly unknown[]): RecordsByClass {
  const byClass = new Map<ClassId, KeptRecord[]>();
  for (const row of rows) {
    const classId = (row as { readonly class_id?: unknown }).class_id;
    if (!isClassId(classId) || !isKept(row)) continue;
    const records = byClass.get(classId) ?? [];
    records.push(row);
    byClass.set(classId, records);
  }
  return byClass;
}
