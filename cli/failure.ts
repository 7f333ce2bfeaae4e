/** Something the person at the terminal can mend: printed to standard error, exit code 2. */
export class Failure extends Error {}

/** Ends the command with a sentence that says what is wrong and what to do. */
export function fail(message: string): never {
  throw new Failure(message);
}
