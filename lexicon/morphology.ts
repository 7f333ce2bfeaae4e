/**
 * Finds what a word is built from: prefix, base, ending, compound parts.
 *
 * Method: cut the spelling where an affix or a second word could begin, rebuild
 * the base (dropped e, doubled consonant, y for i), and believe it only if the
 * word is said as its parts are and WordNet's parts of speech or derivation
 * links agree (*army* is said arm + y but no one derives it so). Reviewed
 * tables hold what is left. Recursive, so *play·ground·s* has two edges.
 * Cutting by spelling alone was rejected: it finds *corn* in *corner*.
 */
import type { Morphemes } from '../core/language/pronunciation.ts';
import { EDGES, FALSE_BASES, TRUE_BASES } from './false-bases.ts';
import type { PartOfSpeech, WordNet } from './wordnet.ts';

/** The words and sounds that bases and parts are looked up in. */
export interface BaseFinder {
  /** All pronunciations of a word, or undefined when it is no word. */
  readonly said: (word: string) => readonly string[] | undefined;
  readonly wordnet: Pick<WordNet, 'partsOfSpeech' | 'derived'>;
}

/** The parts of a word said in one way. Positions are letters. */
export function findMorphemes(word: string, pronunciation: string, finder: BaseFinder): Morphemes {
  const sounds = plain(pronunciation);
  if (Object.hasOwn(FALSE_BASES, word)) return { breaks: [], suffixAt: null };
  const edges = Object.hasOwn(EDGES, word) ? EDGES[word] : undefined;
  if (edges) return edges;
  const suffix = findSuffix(word, sounds, finder);
  if (suffix) {
    const { at } = suffix;
    const inner = partsOf(suffix.base, finder).filter(
      (edge) => edge < (at ?? word.length - 2) && !/([bdgmnprt])\1$/.test(word.slice(0, edge)),
    );
    return at === null
      ? { breaks: inner, suffixAt: null }
      : { breaks: [...inner, at], suffixAt: suffix.inflectional ? at : null };
  }
  const breaks = findWhole(word, pronunciation, finder);
  if (breaks.length === 0 && PLURAL_OF_E.test(word) && /(^| )[^AEIOU@ ][A-Z]* [SZ]$/.test(sounds)) {
    return { breaks: [word.length - 1], suffixAt: word.length - 1 };
  }
  const last = breaks.at(-1) ?? word.length;
  return { breaks, suffixAt: INFLECTION.test(word.slice(last)) ? last : null };
}

/** What may be left of a word after its last edge: *un·warrant·ed*. */
const INFLECTION = /^(s|es|ed|ing|er|est)$/;

/** A word in -es that says no vowel there has a base in e, listed or not: *eaves*, *chives*. */
const PLURAL_OF_E = /[aeiouy][bcdfgklmnprtvz]es$/;

function partsOf(base: string, finder: BaseFinder): readonly number[] {
  const pronunciation = finder.said(base)?.[0];
  return pronunciation ? findMorphemes(base, pronunciation, finder).breaks : [];
}

/** Edges of a prefix or of compound parts. */
function findWhole(word: string, spoken: string, finder: BaseFinder): readonly number[] {
  const sounds = plain(spoken);
  for (const [prefix, heard] of PREFIXES) {
    const rest = word.slice(prefix.length);
    if (!word.startsWith(prefix) || rest.length < 2) continue;
    for (const start of heard) {
      if (!sounds.startsWith(`${start} `)) continue;
      if (!isSaid(rest, sounds.slice(start.length + 1), finder)) continue;
      return [prefix.length, ...partsOf(rest, finder).map((at) => at + prefix.length)];
    }
  }
  for (let at = 3; at <= word.length - 2; at++) {
    const first = word.slice(0, at);
    const second = word.slice(at);
    if (second.length === 2 && !SHORT_PARTS.has(second)) continue;
    if (!isCompound(first, second, spoken, finder)) continue;
    return [...partsOf(first, finder), at, ...partsOf(second, finder).map((edge) => edge + at)];
  }
  return [];
}

/** Prefixes as spelled and as heard. */
const PREFIXES: readonly (readonly [string, readonly string[]])[] = [
  ['under', ['AH N D ER']],
  ['over', ['OW V ER']],
  ['non', ['N AA N', 'N @ N']],
  ['out', ['AW T']],
  ['dis', ['D @ S']],
  ['mis', ['M @ S']],
  ['pre', ['P R IY', 'P R @']],
  ['un', ['@ N', 'AH N']],
  ['re', ['R IY', 'R @']],
  ['de', ['D IY', 'D @']],
  ['in', ['@ N']],
  ['im', ['@ M']],
  ['ex', ['@ K S', 'EH K S', '@ G Z', 'EH G Z']],
  ['up', ['AH P', '@ P']],
];

/** Second parts of two letters: *near·by*, *make·up*. */
const SHORT_PARTS: ReadonlySet<string> = new Set(['by', 'up']);

/** The word is said as its parts, and the second keeps a full vowel: *six·teen*, not *tar·get*. */
function isCompound(first: string, second: string, spoken: string, finder: BaseFinder): boolean {
  const all = spoken.split(' ');
  for (const start of finder.said(first) ?? []) {
    const count = start.split(' ').length;
    if (plain(start) !== plain(all.slice(0, count).join(' '))) continue;
    const rest = all.slice(count).join(' ');
    if (FADED.get(second) === plain(rest)) return true;
    if (KEEPS_VOWEL.test(rest) && isSaid(second, plain(rest), finder)) return true;
  }
  return false;
}

/** Stressed, or a vowel that has not faded. */
const KEEPS_VOWEL = /[12]|(AA|AE|AO|AW|AY|EH|EY|OW|OY|UH|UW)0/;

/** Second parts whose vowel fades, as heard. */
const FADED: ReadonlyMap<string, string> = new Map([
  ['man', 'M @ N'],
  ['men', 'M @ N'],
  ['land', 'L @ N D'],
  ['board', 'B ER D'],
  ['yard', 'Y ER D'],
  ['day', 'D IY'],
  ['berry', 'B EH R IY'],
  ['some', 'S @ M'],
  ['thing', 'TH @ NG'],
]);

function isSaid(word: string, sounds: string, finder: BaseFinder): boolean {
  return finder.said(word)?.some((pronunciation) => plain(pronunciation) === sounds) ?? false;
}

/** `at` is null where the ending starts no syllable of its own: *cra·zy*, *fun·ny*, *ta·ken*. */
interface Suffix {
  readonly base: string;
  readonly at: number | null;
  readonly inflectional: boolean;
}

/** An ending: its letters, its sounds, whether it inflects, and what its base and word must be. */
interface Ending {
  readonly letters: string;
  readonly heard: readonly string[];
  readonly inflectional: boolean;
  readonly base: readonly PartOfSpeech[];
  /** Where the word itself is in WordNet, it must be linked to its base. */
  readonly linked: boolean;
}

const ending = (
  letters: string,
  heard: string,
  base: string,
  kind: 'inflects' | 'derives' | 'linked',
): Ending => ({
  letters,
  heard: heard.split(', '),
  inflectional: kind === 'inflects' || letters === 'er',
  base: base.split(' ') as PartOfSpeech[],
  linked: kind === 'linked',
});

const ENDINGS: readonly Ending[] = [
  ending('ing', '@ NG', 'verb', 'inflects'),
  ending('ed', 'T, D, @ D', 'verb noun', 'inflects'),
  ending('es', '@ Z', 'noun verb', 'inflects'),
  ending('s', 'S, Z', 'noun verb adj adv', 'inflects'),
  ending('est', '@ S T', 'adj adv', 'inflects'),
  ending('er', 'ER', 'adj adv verb noun', 'linked'),
  ending('ize', 'AY Z', 'noun adj', 'linked'),
  ending('ly', 'L IY', 'adj noun adv', 'derives'),
  ending('ful', 'F @ L', 'noun verb', 'derives'),
  ending('less', 'L @ S', 'noun verb', 'derives'),
  ending('ness', 'N @ S', 'adj', 'derives'),
  ending('ment', 'M @ N T', 'verb adj', 'linked'),
  ending('hood', 'HH UH D', 'noun', 'derives'),
  ending('ship', 'SH @ P', 'noun', 'derives'),
  ending('ward', 'W ER D', 'noun adv', 'derives'),
  ending('able', '@ B @ L', 'verb', 'derives'),
  ending('age', '@ JH', 'noun verb adj', 'linked'),
  ending('ish', '@ SH', 'noun adj', 'linked'),
  ending('en', '@ N', 'adj noun verb', 'linked'),
  ending('y', 'IY', 'noun verb adj', 'linked'),
];

function findSuffix(word: string, sounds: string, finder: BaseFinder): Suffix | null {
  for (const candidate of ENDINGS) {
    if (!word.endsWith(candidate.letters)) continue;
    for (const heard of candidate.heard) {
      if (!sounds.endsWith(` ${heard}`)) continue;
      const stem = sounds.slice(0, -heard.length - 1);
      const found = baseSaid(word, stem, candidate, heard, finder);
      if (found) return found;
    }
  }
  return null;
}

function baseSaid(
  word: string,
  stemSounds: string,
  candidate: Ending,
  heard: string,
  finder: BaseFinder,
): Suffix | null {
  const { letters, inflectional } = candidate;
  if (!agrees(letters, heard, stemSounds)) return null;
  const at = word.length - letters.length;
  for (const { base, edge } of spellings(word, letters, at)) {
    if (base.length < 2 || !/[aeiouy]/.test(base) || !fits(word, base, candidate, finder)) continue;
    const said = finder
      .said(base)
      ?.some((pronunciation) =>
        beforeEnding(plain(pronunciation), base, letters).includes(stemSounds),
      );
    if (!said) continue;
    return { base, at: isBlurred(word, base, letters) ? null : edge, inflectional };
  }
  return null;
}

/** Whether base and ending run together: *cra·zy*, *fun·ny*, *ta·ken*, *han·dling*, *pos·si·bly*. */
function isBlurred(word: string, base: string, letters: string): boolean {
  if (letters === 'ly' && base === `${word.slice(0, -2)}le`) return true;
  if (/^(y|en|ish)$/.test(letters)) return base !== word.slice(0, -letters.length);
  return /^(ing|er|est)$/.test(letters) && /[^aeiouylr]le$/.test(base);
}

/** The sound rules of s, es and ed: jump·T, fill·D, land·@ D. */
function agrees(letters: string, heard: string, stem: string): boolean {
  const last = stem.slice(stem.lastIndexOf(' ') + 1);
  const hisses = /^(S|Z|SH|ZH|CH|JH)$/.test(last);
  const voiceless = /^(P|T|K|F|TH|S|SH|CH)$/.test(last);
  if (letters === 'es') return hisses;
  if (letters === 's') return !hisses && (heard === 'S') === voiceless;
  if (letters !== 'ed') return true;
  if (heard === '@ D') return last === 'T' || last === 'D';
  return last !== 'T' && last !== 'D' && (heard === 'T') === voiceless;
}

/** How the base may be spelled, and the letter where the ending then begins. */
function spellings(word: string, letters: string, at: number): { base: string; edge: number }[] {
  const stem = word.slice(0, at);
  const found = [{ base: stem, edge: at }];
  if (letters === 's') {
    if (stem.endsWith('ie')) found.push({ base: `${stem.slice(0, -2)}y`, edge: at });
    if (stem.endsWith('ve')) {
      found.push({ base: `${stem.slice(0, -2)}f`, edge: at });
      found.push({ base: `${stem.slice(0, -2)}fe`, edge: at });
    }
    if (/[oa]e$/.test(stem)) found.unshift({ base: stem.slice(0, -1), edge: at });
    return found;
  }
  if (letters === 'ly') {
    for (const lost of ['le', 'e', 'l']) found.push({ base: `${stem}${lost}`, edge: at });
  }
  if (stem.endsWith('i')) {
    const edge = letters === 'ed' ? at + 1 : at;
    found.push({ base: `${stem.slice(0, -1)}y`, edge });
  }
  if (/^[aeiy]/.test(letters)) {
    const whole = letters === 'ed' && /([eiouy]|[^aeiouylr]l|[aeiou]r)$/.test(stem);
    found.push({ base: `${stem}e`, edge: whole ? at + 1 : at });
    if (/([bdfgklmnprtvz])\1$/.test(stem)) found.push({ base: stem.slice(0, -1), edge: at });
    if (letters === 'ing' && stem.endsWith('y')) {
      found.push({ base: `${stem.slice(0, -1)}ie`, edge: at });
    }
  }
  return found;
}

/** A base's sounds as they may be before an ending: syllabic l and er lose their vowel, long gains a g. */
function beforeEnding(sounds: string, base: string, letters: string): readonly string[] {
  const forms = [sounds];
  if (letters === 's') forms.push(sounds.replace(/F$/, 'V'));
  if (letters === 'ly') forms.push(sounds.replace(/ L$/, ''));
  if (/^e(r|st)$/.test(letters) && base.endsWith('ng')) forms.push(`${sounds} G`);
  if (base.endsWith('le')) forms.push(sounds.replace(/ @ L$/, ' L'), sounds.replace(/ @ L$/, ''));
  if (sounds.endsWith(' ER')) forms.push(sounds.replace(/ER$/, 'R'));
  if (base.endsWith('y')) forms.push(sounds.replace(/IY$/, '@'));
  return forms;
}

function fits(word: string, base: string, candidate: Ending, finder: BaseFinder): boolean {
  const { partsOfSpeech, derived } = finder.wordnet;
  const parts = partsOfSpeech.get(base);
  if (!parts || !candidate.base.some((part) => parts.has(part))) return false;
  if (candidate.letters === 'ed' && partsOfSpeech.get(word)?.has('verb')) return false;
  if (!candidate.linked) return true;
  if (derived.has(`${word}|${base}`) || TRUE_BASES.has(word)) return true;
  const own = partsOfSpeech.get(word);
  if (candidate.letters === 'er') {
    const compared = parts.has('adj') || parts.has('adv');
    return own ? compared && (own.has('adj') || own.has('adv')) : compared || parts.has('verb');
  }
  if (candidate.letters === 'ish') return own?.has('adj') === true && !own.has('verb');
  if (candidate.letters !== 'en') return false;
  return parts.has('adj') ? own?.has('verb') === true : parts.has('verb') && !own?.has('noun');
}

/** Sounds without stress; the source wavers between faded AH and IH, and between AO and AA: one each. */
function plain(pronunciation: string): string {
  return pronunciation
    .replace(/\b(AH0|IH\d|AX)\b/g, '@')
    .replace(/\d/g, '')
    .replace(/\bAO\b(?! R)/g, 'AA');
}
