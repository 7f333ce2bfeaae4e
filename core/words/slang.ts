/**
 * Slang that children say and that the word list does not have: shown as nonsense it would be heard as
 * the word. From memory, American and British; what is unfit besides is for the word screen. Sorted.
 */
const SLANG: ReadonlySet<string> = new Set(
  `bae binch bish bleh bro bruh bruv chav cray cun cuz dank def dep doh duh dweeb eek fab fam fave
    gah gank gat gob gox grr hass hench hun innit ish kiff lan lol mab med meg meh mic mig nah
    nam nerf noob nop nope nud obvs oof pag peng pess pez phat pleb pog pox pute pwn rando reb
    rizz sesh shex siff simp skeet skrrt snog sorta spupe stan sup sus tat thang totes tum tup
    vog wack whoa wot wub wuff yaas yah yeck yed yeet yem yep yiff yikes yo yolo yup zaddy zass
    zonk`
    .split(/\s+/)
    .filter(Boolean),
);

/** Whether a spelling of nonsense, lower case, is slang, or holds a word that a class would laugh or wince at: *squeer*. */
export function isSlang(word: string): boolean {
  return SLANG.has(word) || HOLDS.test(word);
}

const HOLDS = /ass$|poop|queer|rape|wank/;
