import type { Grade } from '../core/sequence/sequence.ts';

/**
 * Words worth knowing by heart, by the grade in which children meet them in
 * print, the most needed first. Reviewed by hand: most of the early ones are on
 * Dolch's list (1936) or named by the Common Core standards; the later ones are
 * common words that the spellings taught by then do not explain. Which step
 * takes a word is computed: a word that the next steps open by rule is left out.
 */
export const IRREGULAR_WORDS: Readonly<Record<Grade, readonly string[]>> = {
  K: wordsIn(`
    the a to i of you he was she we my me are go do no said be all they so for have what your one
    like there her want here come from who some were two where does put out or now good look too
    down see by little`),
  '1': wordsIn(`
    could would should know love very new any many into been people mother father other only
    because again their call talk once done work world through thought before sure great friend
    live give gone goes something anything nothing today together always away our
    house money school water warm wash word write door four eight every everyone brother
    both blue find old kind light right laugh eat please pretty saw say show small way walk won own
    poor pull push full none idea key eye half hold long month most move under yellow don't shoe`),
  '2': wordsIn(`
    against although among answer anyone aunt beautiful blood bought break breakfast
    brought build built busy buy caught climb clothes color cousin daughter doctor early earth
    enough favorite flood guess guy heard heart hour island juice
    learn lose minute mountain movie ocean often oven piece prove quiet rough
    science shoulder someone sometimes straight sugar sword though
    tomorrow touch tough trouble truth whole whose wild wolf woman women worry young
    `),
  '3': wordsIn(`
    ache ancient bear broad bury business calf canoe chocolate choir
    cough dough drawer drought eighth eyebrow folk foreign height honest honor
    iron knowledge lawyer league library machine muscle ninth onion pear pizza receipt
    restaurant salmon scissors sew soldier soul soup steak stomach suit theater
    tongue toward unique usual vegetable view wear weird yacht yolk`),
};

function wordsIn(text: string): readonly string[] {
  return text.trim().split(/\s+/);
}
