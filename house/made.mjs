import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fromRoot } from './root.mjs';

/**
 * Something that is built, not written: remade only when what it is made from has changed.
 *
 * @typedef {object} Made
 * @property {readonly string[]} from files and folders it depends on (tests and dist folders in them do not count)
 * @property {readonly string[]} files what must be there afterwards
 * @property {string} stamp the file that remembers the hash of what it was made from
 * @property {() => Promise<void>} make makes it; throws with what to do
 */

/**
 * Makes the thing when it is missing or stale; otherwise costs one hash over its sources, some
 * milliseconds. The stamp is removed first and written last: a broken-off make is made again.
 *
 * @param {Made} made
 */
export async function ensureMade(made) {
  const hash = hashOf(made.from);
  const stamp = fromRoot(made.stamp);
  const isThere = () => made.files.every((file) => existsSync(fromRoot(file)));
  if (isThere() && existsSync(stamp) && readFileSync(stamp, 'utf8') === hash) return;
  rmSync(stamp, { force: true });
  await made.make();
  const missing = made.files.filter((file) => !existsSync(fromRoot(file)));
  if (missing.length > 0)
    throw new Error(`The build ended well but left out ${missing.join(', ')}.`);
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, hash);
}

/**
 * @param {readonly string[]} sources
 * @returns {string} SHA-256, in hexadecimal, over names and contents
 */
function hashOf(sources) {
  const hash = createHash('sha256');
  for (const source of sources) {
    for (const file of filesIn(source)) {
      const content = readFileSync(fromRoot(file));
      hash.update(`${file}\0${content.length}\0`).update(content);
    }
  }
  return hash.digest('hex');
}

/**
 * @param {string} path
 * @returns {string[]} the file itself, or all files below the folder in a fixed order; none if absent
 */
function filesIn(path) {
  const full = fromRoot(path);
  if (!existsSync(full)) return [];
  const entries = readEntries(full);
  if (!entries) return [path];
  return entries
    .filter((entry) => entry.name !== 'dist' && !/\.(test|md)\b/.test(entry.name))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => filesIn(join(path, entry.name)));
}

/**
 * @param {string} path
 * @returns {import('node:fs').Dirent[] | undefined} undefined when it is not a folder
 */
function readEntries(path) {
  try {
    return readdirSync(path, { withFileTypes: true });
  } catch {
    return undefined;
  }
}
