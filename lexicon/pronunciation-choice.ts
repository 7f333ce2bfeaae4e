/**
 * Chooses the ordinary pronunciation of a word from the data, and keeps others
 * only where the meaning differs.
 *
 * Method, in order: the reviewed heteronyms; the reviewed corrections; else the
 * source's first variant, exchanged for a fuller one where that only restores a
 * faded vowel or consonant that is spelled (*fam·i·ly*, *diff·er·ent*).
 * Choosing whichever variant aligns best was rejected: it hides irregularity.
 */
import { CORRECTIONS } from './corrections.ts';
import { HETERONYMS } from './heteronyms.ts';

/** Ordinary pronunciation first; at most three. ARPABET with stress. */
export function choosePronunciations(word: string, variants: readonly string[]): readonly string[] {
  const heteronym = Object.hasOwn(HETERONYMS, word) ? HETERONYMS[word] : undefined;
  if (heteronym) return heteronym;
  const correction = corrected.get(word);
  if (correction) return [correction, ...otherReadings(word)];
  let chosen = withoutOlderWh(variants[0] as string);
  if (!SHORT_IS_ORDINARY.has(word) && !CONSONANT_LE.test(word)) {
    for (const variant of variants.slice(1).map(withoutOlderWh)) {
      if (restores(word, chosen, variant) || isClearer(word, chosen, variant)) chosen = variant;
    }
  }
  return [byEnding(word, chosen)];
}

const corrected: ReadonlyMap<string, string> = new Map(
  CORRECTIONS.map(([word, pronunciation]) => [word, pronunciation]),
);

/** Whether a reviewed table gives the word's pronunciation. */
export function isReviewed(word: string): boolean {
  return Object.hasOwn(HETERONYMS, word) || corrected.has(word);
}

/** `a` has its name as a second reading, `the` its form before vowels. */
function otherReadings(word: string): readonly string[] {
  if (word === 'a') return ['EY1'];
  return word === 'the' ? ['DH IY0'] : [];
}

/** Words whose shorter form is the ordinary one although the source has a longer. */
const SHORT_IS_ORDINARY: ReadonlySet<string> = new Set(
  `aisle aisles chestnut clothes fasten glisten hasten listen miles moisten often oftener oftentimes
   ratchet soften thistle whistle wrestle`
    .trim()
    .split(/\s+/),
);

/** Words on a base in consonant-le: *han·dling*, *smug·glers*, *bub·bly* have no vowel before l. */
const CONSONANT_LE = /[^aeiouylr]l(ing|ers?|est|y)$/;

/** The source wavers within a family of endings; these are said alike. */
function byEnding(word: string, pronunciation: string): string {
  if (/^u[np]/.test(word)) return pronunciation.replace(/^AH0/, 'AH2');
  if (!word.includes('w') && / AH[02] W [A-Z]+\d/.test(pronunciation)) {
    return pronunciation.replace(/ AH[02] W/g, ' UW0');
  }
  if (CONSONANT_LE.test(word)) return pronunciation.replace(/ AH0 L (IH0|ER0|IY0)/, ' L $1');
  if (word.endsWith('ically')) return pronunciation.replace(/ K L IY0$/, ' K AH0 L IY0');
  if (word.endsWith('fully')) return pronunciation.replace(/ F L IY0$/, ' F AH0 L IY0');
  return word.includes('tion') ? pronunciation.replace(/ SH N /, ' SH AH0 N ') : pronunciation;
}

/** Whether `longer` is `shorter` with one faded sound restored that the spelling shows. */
function restores(word: string, shorter: string, longer: string): boolean {
  const short = bare(shorter);
  const long = bare(longer);
  const at = long.findIndex((sound, index) => sound !== short[index]);
  if (long.length === short.length) {
    const faded =
      long[at] === 'ER' && short[at] === 'R' && /[A-Z]0/.test(longer.split(' ')[at + 1] ?? '');
    return faded && long.toSpliced(at, 1, 'R').join(' ') === short.join(' ');
  }
  if (long.length !== short.length + 1) return false;
  if (long.toSpliced(at, 1).join(' ') !== short.join(' ')) return false;
  const sound = long[at] as string;
  if (sound === 'AX' || sound === 'IH') return true;
  return /^[DTPK]$/.test(sound) && word.includes(sound === 'K' ? 'c' : sound.toLowerCase());
}

/** *thirty* with its t, not the d of quick speech; verbs in -ate with their long a. */
function isClearer(word: string, chosen: string, variant: string): boolean {
  const tapped = !word.includes('d') && variant.replaceAll(' T ', ' D ') === chosen;
  return tapped || (word.endsWith('ate') && variant.endsWith('EY2 T') && !chosen.endsWith('EY2 T'));
}

function bare(pronunciation: string): string[] {
  return pronunciation
    .split(' ')
    .map((sound) => (sound === 'AH0' ? 'AX' : sound.replace(/\d$/, '')));
}

/** HH W, as some older speakers say *when*, is no longer general. */
function withoutOlderWh(pronunciation: string): string {
  return pronunciation.replace(/\bHH W\b/, 'W');
}
