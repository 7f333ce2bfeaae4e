/** The letters on a card, as they stand in a sentence: `sh`, `a_e`. */
export function lettersOf(id: string): string {
  return id.slice(0, id.indexOf('='));
}
