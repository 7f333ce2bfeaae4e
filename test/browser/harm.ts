import { existsSync, readdirSync, rmSync, statSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import type { Random } from '../../core/random.ts';

/**
 * Deletes one of the two copies of all classes from the folder of a browser that is not running, or cuts
 * the files of one short at a random place; tells what was done. The list in which Chromium keeps the names
 * of files is only ever deleted: once it is cut short, this browser forgets all files at every start, and has
 * no second copy any more, whatever a page does (it is told so).
 */
export function harmOneCopy(folder: string, random: Random): string {
  const [copy, place] = random.below(2) === 0 ? DATABASE : FILES;
  const root = join(folder, 'Default', place);
  if (!existsSync(root)) return `no ${copy} yet`;
  if (random.below(2) === 0) {
    rmSync(root, { recursive: true, force: true });
    return `${copy} deleted`;
  }
  const written = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .map((path) => join(root, path))
    .filter((path) => statSync(path).isFile() && holdsEvents(path));
  for (const path of written) truncateSync(path, random.below(statSync(path).size + 1));
  return `${copy} cut short`;
}

const DATABASE = ['database', 'IndexedDB'] as const;
const FILES = ['files', 'File System'] as const;

/** The log of a database, or a file of the second copy. */
function holdsEvents(path: string): boolean {
  return /leveldb[/\\]\d{6}\.log$|[/\\]\d{8}$/.test(path);
}
