/**
 * Pronounces a regularly inflected word from its base: s as S, Z or IH Z and ed
 * as T, D or IH D by the base's last sound, ing as IH NG (the rules of any
 * English grammar). Also joins the parts of a compound.
 */

const HISSING = /(^| )(S|Z|SH|ZH|CH|JH)$/;
const VOICELESS = /(^| )(P|T|K|F|TH|S|SH|CH)$/;

/** `pronunciation` with the ending's sounds added. */
export function addEnding(pronunciation: string, ending: 's' | 'ed' | 'ing'): string {
  if (ending === 'ing') return `${pronunciation} IH0 NG`;
  if (ending === 's') {
    if (HISSING.test(pronunciation)) return `${pronunciation} IH0 Z`;
    return `${pronunciation} ${VOICELESS.test(pronunciation) ? 'S' : 'Z'}`;
  }
  if (/(^| )[TD]$/.test(pronunciation)) return `${pronunciation} IH0 D`;
  return `${pronunciation} ${VOICELESS.test(pronunciation) ? 'T' : 'D'}`;
}

/** Two parts said as one word: the second loses its main stress. */
export function joinParts(first: string, second: string): string {
  return `${first} ${second.replaceAll('1', '2')}`;
}

/** Base spellings an inflected word may come from, likeliest first. */
export function basesOf(
  word: string,
): readonly (readonly [base: string, ending: 's' | 'ed' | 'ing'])[] {
  const bases: [string, 's' | 'ed' | 'ing'][] = [];
  const undouble = (stem: string) => (/([bdfgklmnprtvz])\1$/.test(stem) ? [stem.slice(0, -1)] : []);
  for (const ending of ['ing', 'ed'] as const) {
    if (!word.endsWith(ending)) continue;
    const stem = word.slice(0, -ending.length);
    if (ending === 'ed' && stem.endsWith('i')) bases.push([`${stem.slice(0, -1)}y`, ending]);
    for (const base of [...undouble(stem), `${stem}e`, stem]) bases.push([base, ending]);
  }
  if (word.endsWith('s') && !word.endsWith('ss')) {
    if (word.endsWith('ies')) bases.push([`${word.slice(0, -3)}y`, 's']);
    bases.push([word.slice(0, -1), 's']);
    if (/(s|x|z|ch|sh|o)es$/.test(word)) bases.push([word.slice(0, -2), 's']);
  }
  return bases;
}
