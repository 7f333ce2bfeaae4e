import { appendFileSync, existsSync, readdirSync, rmSync, statSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import type { Random } from '../../core/random.ts';

/** What can be done to one of the two copies. */
export type Harm = (typeof HARMS)[number];

/**
 * Deletes one of the two copies of all classes from the folder of a browser that is not running, cuts the
 * files of one short at a random place, or leaves the database as a kill in the middle of a write does; tells
 * whether there was anything to harm. The list in which Chromium keeps the names
 * of files is only ever deleted: once it is cut short, this browser forgets all files at every start, and has
 * no second copy any more, whatever a page does (it is told so).
 */
export function harmOneCopy(folder: string, harm: Harm, random: Random): boolean {
  const root = join(folder, 'Default', harm.startsWith('database') ? 'IndexedDB' : 'File System');
  if (!existsSync(root)) return false;
  if (harm.endsWith('deleted')) {
    rmSync(root, { recursive: true, force: true });
    return true;
  }
  const written = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .map((path) => join(root, path))
    .filter((path) => statSync(path).isFile() && holdsEvents(path));
  for (const path of written) {
    if (harm === 'database torn') appendFileSync(path, BEGUN);
    else truncateSync(path, random.below(statSync(path).size + 1));
  }
  return true;
}

/** Every harm, each as likely as its place in this list is often. */
export const HARMS = [
  'database deleted',
  'database deleted',
  'database cut short',
  'database torn',
  'files deleted',
  'files deleted',
  'files cut short',
  'files cut short',
] as const;

/**
 * The head of a record of 64 signs in a log of LevelDB, without the record, which Chromium writes after it in
 * a call of its own. At the next start this ends the log, and what is written goes behind it; once that is
 * as long as the record would have been, it does not match its head, and Chromium throws the whole database
 * away at the start after that.
 */
const BEGUN = new Uint8Array([0, 0, 0, 0, 64, 0, 1]);

/** The log of a database, or a file of the second copy. */
function holdsEvents(path: string): boolean {
  return /leveldb[/\\]\d{6}\.log$|[/\\]\d{8}$/.test(path);
}
