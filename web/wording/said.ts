/** A share as it is said, in whole percent: `78%`. */
export function shareSaid(share: number): string {
  return `${Math.round(share * 100)}%`;
}

/** Names in a row: `Tam`, `Tam and Wren`, `Tam, Wren and 3 more` when there are more than `most`. */
export function namesSaid(names: readonly string[], most = 4): string {
  if (names.length > most) {
    const shown = names.slice(0, most - 1);
    return `${shown.join(', ')} and ${names.length - shown.length} more`;
  }
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
