import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Kysely, sql } from 'kysely';
import type { Tables } from './database/schema.ts';

/** Copies are kept for so many days: as long a deleted class can be in one. */
const KEPT_DAYS = 30;

const NAME = /^sweepline-(\d{4}-\d{2}-\d{2})[.]db$/;

/**
 * Copies the embedded database into a folder, once for each day (`YYYY-MM-DD`), and takes away copies older
 * than thirty days. A copy is whole or not there. Gives its path, or null when that day has one already.
 */
export async function backUp(
  db: Kysely<Tables>,
  folder: string,
  day: string,
): Promise<string | null> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const oldest = new Date(Date.parse(day) - KEPT_DAYS * 24 * 60 * 60 * 1000).toISOString();
  for (const name of readdirSync(folder)) {
    const copied = NAME.exec(name)?.[1];
    if (copied !== undefined && copied < oldest.slice(0, 10)) rmSync(join(folder, name));
  }
  const path = join(folder, `sweepline-${day}.db`);
  if (existsSync(path)) return null;
  const unfinished = `${path}.part`;
  rmSync(unfinished, { force: true });
  await sql`vacuum into ${unfinished}`.execute(db);
  renameSync(unfinished, path);
  return path;
}
