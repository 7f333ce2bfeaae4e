/** Words of the list that English writes with a capital wherever they stand, by their list form. */
const CAPITAL: ReadonlySet<string> = new Set(
  `i monday tuesday wednesday thursday friday saturday sunday january february april june july
   august september october november december`.split(/\s+/),
);

/** A listed word as it is written: *I*, *Monday*; all others as they are listed. */
export function asWritten(word: string): string {
  return CAPITAL.has(word) ? word.charAt(0).toUpperCase() + word.slice(1) : word;
}
