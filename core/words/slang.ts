/**
 * Slang that children say and that the word list does not have: shown as nonsense it would be heard as
 * the word. From memory, American and British; what is unfit besides is for the word screen. Sorted.
 */
const SLANG: ReadonlySet<string> = new Set(
  `bae bleh bro bruh bruv chav cray cuz dank def dep doh duh dweeb eek fab fam fave gah gank gat
    gob gox grr hench hun innit ish lan lol mab med meg meh mic mig nah nam nerf noob nop nope obvs oof pag
    peng pez phat pleb pog pox pwn rando reb rizz sesh simp skeet skrrt snog sorta stan sup
    sus tat thang totes tum vog wack whoa wot wuff yaas yah yeck yed yeet yem yep yikes yo yolo yup
    zaddy zonk`
    .split(/\s+/)
    .filter(Boolean),
);

/** Whether a spelling, lower case, is slang. */
export function isSlang(word: string): boolean {
  return SLANG.has(word);
}
