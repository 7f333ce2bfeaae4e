import { readFileSync } from 'node:fs';
import { fromRoot } from './root.mjs';
import { run } from './run.mjs';
import { say } from './say.mjs';

/**
 * Makes sure that the packages named in package-lock.json are installed, and runs `npm ci` when they
 * are missing or others. npm writes down what it installed in node_modules/.package-lock.json, last
 * of all; that record is compared, so that an install broken off half-way counts as none.
 *
 * @returns {Promise<void>} throws with what to do when the packages cannot be installed
 */
export async function ensureModules() {
  const wanted = packagesIn('package-lock.json');
  if (!wanted) throw new Error('package-lock.json is missing: take it from the repository again.');
  const installed = packagesIn('node_modules/.package-lock.json');
  if (installed && isInstalled(wanted, installed)) return;
  say('Installing the packages that Sweepline is built from (once; about a minute) …');
  const code = await run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  if (code !== 0) {
    throw new Error(
      `The packages could not be installed (npm ci ended with ${code}). ` +
        'Check the network connection and the messages above, then try again.',
    );
  }
}

/**
 * @typedef {Readonly<Record<string, { version?: string, integrity?: string, optional?: boolean }>>} Packages
 *   by folder, the project's own entry ('') included
 */

/**
 * Whether every package of the lockfile is installed in just that version. Optional ones may be
 * absent: they are binaries for other kinds of computer.
 *
 * @param {Packages} wanted
 * @param {Packages} installed
 */
export function isInstalled(wanted, installed) {
  return Object.entries(wanted).every(([folder, { version, integrity, optional }]) => {
    if (folder === '') return true;
    const found = installed[folder];
    if (!found) return optional === true;
    return found.version === version && found.integrity === integrity;
  });
}

/**
 * @param {string} path of a lockfile
 * @returns {Packages | undefined} undefined when it is missing or broken
 */
function packagesIn(path) {
  try {
    return JSON.parse(readFileSync(fromRoot(path), 'utf8')).packages;
  } catch {
    return undefined;
  }
}
