/**
 * Tells the person at the terminal what is going on. Always on standard error, so that the output
 * of a command (JSON for a script, say) stays clean.
 *
 * @param {string} line
 */
export function say(line) {
  process.stderr.write(`${line}\n`);
}

/**
 * Ends the program kindly: what went wrong, what to do, no stack.
 *
 * @param {unknown} error
 * @returns {never}
 */
export function giveUp(error) {
  say(`\n${error instanceof Error ? error.message : String(error)}`);
  process.exit(1);
}
