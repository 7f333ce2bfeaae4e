/**
 * Letters that are each other turned or mirrored: b and d, p and q, and b with q, d with p by half a
 * turn. b and p are not among them: they are told apart by the voice, and a p for a b is more often heard
 * wrong than turned (upside-down letters are rarer than mirrored ones; common practice, no source).
 */
const TURNED: ReadonlySet<string> = new Set(['bd', 'db', 'pq', 'qp', 'bq', 'qb', 'dp', 'pd']);

/** Whether `wrote` is `asked` with one letter or more turned, and no other difference. */
export function isTurned(asked: string, wrote: string): boolean {
  if (asked.length !== wrote.length || asked === wrote) return false;
  for (let at = 0; at < asked.length; at++) {
    if (asked[at] !== wrote[at] && !TURNED.has(`${asked[at]}${wrote[at]}`)) return false;
  }
  return true;
}

/** Whether `wrote` has the letters of `asked`, two neighbors exchanged. */
export function isExchanged(asked: string, wrote: string): boolean {
  if (asked.length !== wrote.length || asked === wrote) return false;
  let at = 0;
  while (asked[at] === wrote[at]) at++;
  return (
    asked[at] === wrote[at + 1] &&
    asked[at + 1] === wrote[at] &&
    asked.slice(at + 2) === wrote.slice(at + 2)
  );
}
