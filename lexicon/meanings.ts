/**
 * Short meanings for a teacher who meets a real word she did not expect.
 *
 * Method: our own meanings first (own-meanings.ts); else WordNet's glosses in
 * the order of use, the first that is fit for a classroom, does not explain the
 * word by itself, and fits in 60 characters, whole or to the end of a clause. Only words that a board
 * can make: one syllable, and the commoner ones of two, and all that have a meaning of our own.
 */
import type { Reading } from '../core/language/reading.ts';
import type { Band } from '../core/words/lexicon.ts';
import { OWN_MEANINGS } from './own-meanings.ts';
import type { WordNet } from './wordnet.ts';

const LONGEST = 60;

/** The commonest bands from which words of two syllables are taken. */
const TWO_SYLLABLE_BANDS = 4;

/** Meanings by word, alphabetical. */
export function chooseMeanings(
  words: readonly {
    readonly word: string;
    readonly band: Band;
    readonly readings: readonly Reading[];
  }[],
  { glosses }: Pick<WordNet, 'glosses'>,
): ReadonlyMap<string, string> {
  const found: [string, string][] = [];
  for (const { word, band, readings } of words) {
    const own = OWN_MEANINGS.get(word);
    const syllables = readings[0]?.syllables.length ?? 0;
    const isMet = syllables < 2 || (syllables === 2 && band <= TWO_SYLLABLE_BANDS);
    if (!own && !isMet) continue;
    const meaning =
      own ??
      (glosses.get(word) ?? []).map((gloss) => shorten(gloss, word)).find((text) => text !== null);
    if (meaning) found.push([word, meaning]);
  }
  return new Map(found.sort((a, b) => (a[0] < b[0] ? -1 : 1)));
}

/** A gloss cut to its first clause, or null when it is unfit, circular or cannot be cut. */
function shorten(gloss: string, word: string): string | null {
  const definition = gloss.split(/; (?=")|: (?=")/)[0] as string;
  if (UNFIT.test(definition)) return null;
  let text = definition
    .replace(/^\([^)]*\)\s*/, '')
    .replace(/\s*\([^)]*\)/g, '')
    .split(';')[0] as string;
  text = text.replaceAll('`', "'").trim();
  if (text.length > LONGEST) text = cutAtClause(text);
  if (text.length < 3 || text.length > LONGEST) return null;
  return isCircular(text, word) ? null : text;
}

/** Whether a meaning explains a word by itself: *mix: mix together*. */
function isCircular(text: string, word: string): boolean {
  const stem = word.length > 4 ? word.replace(/(e|ing|ed|er|s)$/, '') : word;
  return new RegExp(`\\b${stem}`, 'i').test(text);
}

/** Cuts before a joint of the sentence; a text without one stays as long as it is. */
function cutAtClause(text: string): string {
  const head = text.slice(0, LONGEST + 1);
  const joints = [
    ...head.matchAll(/,? (that|which|who|especially|usually|used|such|or|and|with|by)\b|, /g),
  ];
  const joint = joints.findLast(({ index }) => index >= 24);
  if (joint) return head.slice(0, joint.index).replace(/,$/, '');
  return text;
}

/** Topics that a gloss shown in a classroom must not touch. Whole words or word beginnings. */
const UNFIT =
  /\b(sex|copulat|coit|intercourse|erotic|prostitut|genital|penis|vagina|breasts?\b|nipple|testic|scrot|anus\b|rectum|buttocks|excre|feces|faec|urin|defecat|menstr|semen|sperm|masturb|orgasm|pimp|whore|naked|nude|lust|drug|narcotic|cocaine|heroin|marijuana|cannabis|opium|hashish|intoxica|drunk|alcohol|liquor|whisk|vodka|beer|tobacco|cigar|offensive|obscen|vulgar|slang|slur|disparag|derog|ethnic|racial|negro|homosexual|lesbian|murder|kill|suicid|rape|rapist|tortur|execut|corpse|behead|stab|hang(ed|ing)\b|slaught|gun\b|rifle|pistol|bomb|terror|nazi|hell\b|damn|devil|contempt|uncomplimentary|worthless|obnoxious|venereal|troublesome|not very intelligent|morally|dupe|fool\b|idiot|stupid|retard|insult|abus|incest|castrat|abort|prison|jail|hitler)/i;
