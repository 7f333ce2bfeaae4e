import { spawn } from 'node:child_process';
import { fromRoot } from './root.mjs';

/**
 * Runs a program in the project's folder, without a shell, and waits for it. What it prints goes to
 * standard error, so that the standard output of whoever asked stays theirs.
 *
 * @param {string} program
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string>>} [environment] added to the environment it inherits
 * @returns {Promise<number>} its exit code; 127 when it could not be started, 1 when it was stopped
 */
export function run(program, args, environment = {}) {
  return ended(started(program, args, environment, 2));
}

/**
 * Runs a program the same way, but keeps what it prints, so that several can run at a time.
 *
 * @param {string} program
 * @param {readonly string[]} args
 * @returns {Promise<{ readonly code: number, readonly output: string }>} its exit code as `run` tells it,
 *   and all it printed, errors among it
 */
export async function runApart(program, args) {
  const child = started(program, args, {}, 'pipe');
  /** @type {Buffer[]} */
  const printed = [];
  for (const stream of [child.stdout, child.stderr])
    stream?.on('data', (piece) => printed.push(piece));
  const code = await ended(child);
  return { code, output: Buffer.concat(printed).toString() };
}

/**
 * @param {string} program
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string>>} environment
 * @param {2 | 'pipe'} output
 */
function started(program, args, environment, output) {
  return spawn(program, args, {
    cwd: fromRoot(),
    stdio: ['ignore', output, output],
    env: { ...process.env, ...environment },
  });
}

/**
 * @param {import('node:child_process').ChildProcess} child
 * @returns {Promise<number>}
 */
function ended(child) {
  return new Promise((resolve) => {
    child.once('error', () => resolve(127));
    child.once('close', (code) => resolve(code ?? 1));
  });
}
