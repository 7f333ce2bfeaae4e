/**
 * Slang that children say and that the word list does not have: shown as nonsense it would be heard as
 * the word. From memory, American and British; what is unfit besides is for the word screen. Sorted.
 */
const SLANG: ReadonlySet<string> = new Set(
  `bae bleh bro bruh cray cuz def duh fam fave innit ish lol meh mic nah nerf noob nope obvs pog
   rando rizz sesh simp sup sus thang totes wot yeet yep yo yolo yup`
    .split(/\s+/)
    .filter(Boolean),
);

/** Whether a spelling, lower case, is slang. */
export function isSlang(word: string): boolean {
  return SLANG.has(word);
}
