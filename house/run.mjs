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
  return new Promise((resolve) => {
    const child = spawn(program, args, {
      cwd: fromRoot(),
      stdio: ['ignore', 2, 2],
      env: { ...process.env, ...environment },
    });
    child.once('error', () => resolve(127));
    child.once('close', (code) => resolve(code ?? 1));
  });
}
