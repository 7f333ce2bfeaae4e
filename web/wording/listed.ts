/** Things in a row as a sentence has them: `st`, `st and bl`, `a_e, st and bl`. */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
