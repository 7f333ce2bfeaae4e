/**
 * Chooses the words of the list and how common each is.
 *
 * Method: candidates are lower-case SCOWL words with a pronunciation (the
 * source dictionary's, a reviewed addition, or a regular inflection of one).
 * Commonness mixes how often subtitles have a word with its SCOWL class, since
 * film talk is not a child's day; a reviewed list lifts children's words. The
 * commonest are kept. The mix is ours and only ever leaves as seven bands.
 */
import type { Band } from '../core/words/lexicon.ts';
import { ADDITIONS } from './additions.ts';
import { CHILDRENS_WORDS } from './children.ts';
import { addEnding, basesOf, joinParts } from './inflected.ts';
import { isWordNotName } from './names.ts';
import { choosePronunciations, isReviewed } from './pronunciation-choice.ts';
import type { Sources } from './sources.ts';
import { isUnfit } from './unfit.ts';

/** A word of the list; `rank` counts from 0, the commonest, and never ships. */
export interface ChosenWord {
  readonly word: string;
  readonly rank: number;
  readonly band: Band;
  readonly pronunciations: readonly string[];
}

/** How many words the list holds. */
const WORDS = 34_000;

/** The rank at which each band ends; what is rarer is band 7. */
const BAND_ENDS = [300, 1000, 2500, 5000, 10_000, 20_000] as const;

/** Subtitle counts mislead here: halves of split contractions, and film talk. */
const SPLIT_OR_SLANG: ReadonlySet<string> = new Set(
  'ain cause don em huh ma ow wont yep'.split(' '),
);

/** Mean commonness of each SCOWL class on the scale of `commonness`; unknown words count as class 50. */
const BY_SIZE: ReadonlyMap<number, number> = new Map([
  [10, 4.8],
  [20, 4.1],
  [35, 3.2],
  [40, 2.7],
  [50, 2.4],
  [55, 2.1],
  [60, 2],
]);

/** Commonness below which children's everyday words do not fall. */
const CHILDRENS_FLOOR = 3.9;

/** The words, commonest first. */
export function chooseWords(sources: Sources): readonly ChosenWord[] {
  const said = pronounceAll(sources);
  const scored = [...said]
    .map(([word, pronunciations]) => ({ word, pronunciations, score: commonness(word, sources) }))
    .sort((a, b) => b.score - a.score || (a.word < b.word ? -1 : 1));
  const wanted = scored.filter(isWanted);
  const others = scored.filter((candidate) => !isWanted(candidate));
  const kept = new Set([...wanted, ...others.slice(0, WORDS - wanted.length)]);
  return scored
    .filter((candidate) => kept.has(candidate))
    .map(({ word, pronunciations }, rank) => ({ word, rank, band: bandOf(rank), pronunciations }));
}

/** Reviewed words, and words of one syllable: one sound with a stress digit. */
function isWanted({ word, pronunciations }: Pick<ChosenWord, 'word' | 'pronunciations'>): boolean {
  if (Object.hasOwn(ADDITIONS, word) || CHILDRENS_WORDS.has(word)) return true;
  return pronunciations[0]?.replace(/\D/g, '').length === 1;
}

function bandOf(rank: number): Band {
  const at = BAND_ENDS.findIndex((end) => rank < end);
  return (at < 0 ? 7 : at + 1) as Band;
}

/** Pronunciations of every candidate. */
function pronounceAll(sources: Sources): Map<string, readonly string[]> {
  const said = new Map<string, readonly string[]>();
  const candidates = [...sources.sizes.keys()].filter((word) => isCandidate(word, sources));
  for (const word of candidates) {
    const variants = sources.pronunciations.get(word);
    if (variants) said.set(word, choosePronunciations(word, variants));
  }
  for (const [word, pronunciation] of asTheirBases(said, sources)) said.set(word, [pronunciation]);
  for (const word of Object.keys(ADDITIONS)) if (!word.endsWith('s')) add(word, said);
  for (const word of Object.keys(ADDITIONS)) add(word, said);
  for (const word of candidates) {
    if (said.has(word) || (sources.sizes.get(word) as number) > 50) continue;
    if (!sources.counts.has(word)) continue;
    const inflected = inflect(word, said, sources);
    if (inflected) said.set(word, [inflected]);
  }
  return said;
}

/** Inflected words that the source says like another variant of their base than the one chosen. */
function* asTheirBases(
  said: ReadonlyMap<string, readonly string[]>,
  { pronunciations }: Sources,
): Generator<readonly [word: string, pronunciation: string]> {
  for (const [word, own] of said) {
    if (own.length > 1 || isReviewed(word)) continue;
    for (const [base, ending] of basesOf(word)) {
      const chosen = said.get(base);
      if (chosen?.length !== 1 || chosen[0] === pronunciations.get(base)?.[0]) continue;
      const inflected = addEnding(chosen[0] as string, ending);
      const varied = pronunciations
        .get(base)
        ?.some((variant) => alike(addEnding(variant, ending), own[0] as string));
      if (varied && !alike(inflected, own[0] as string)) yield [word, inflected];
      if (varied) break;
    }
  }
}

/** The same sounds, whatever the stress and whichever faded vowel. */
function alike(a: string, b: string): boolean {
  const plain = (text: string) => text.replace(/\b(AH0|IH0)\b/g, '@').replace(/\d/g, '');
  return plain(a) === plain(b);
}

function isCandidate(word: string, sources: Sources): boolean {
  if (isUnfit(word, sources.ratedVulgar)) return false;
  const size = sources.sizes.get(word) as number;
  return isWordNotName(word, size, isCapitalised(word, sources), sources.stems);
}

function isCapitalised(word: string, { counts }: Sources): boolean {
  return counts.has(word[0]?.toUpperCase() + word.slice(1));
}

/** Adds a reviewed addition, made of its parts where it has some. */
function add(word: string, said: Map<string, readonly string[]>): void {
  const value = ADDITIONS[word] as string;
  const [first = '', second] = value.split('+');
  if (second === undefined) {
    said.set(word, [value]);
    return;
  }
  const base = said.get(first)?.[0];
  if (!base) return;
  if (second === 's' || second === 'ed' || second === 'ing') {
    said.set(word, [addEnding(base, second)]);
    return;
  }
  const other = said.get(second)?.[0];
  if (!other) throw new Error(`The addition ${word} needs ${second}, which is not in the list.`);
  said.set(word, [joinParts(base, other)]);
}

function inflect(
  word: string,
  said: ReadonlyMap<string, readonly string[]>,
  { stems }: Sources,
): string | null {
  for (const [base, ending] of basesOf(word)) {
    const pronunciation = said.get(base)?.[0];
    if (pronunciation && stems.has(base)) return addEnding(pronunciation, ending);
  }
  return null;
}

/** About log10 of uses in a thousand million words; 6 and more for *the*, 2 for a rare word. */
function commonness(word: string, sources: Sources): number {
  const size = sources.sizes.get(word) ?? 50;
  const capital = sources.counts.get(word[0]?.toUpperCase() + word.slice(1)) ?? 0;
  const trusted = Object.hasOwn(ADDITIONS, word) || (size <= 10 && !NAME_FIRST.has(word));
  const count = (sources.counts.get(word) ?? 0) + (trusted ? capital : capital / 20);
  const heard = Math.log10(((SPLIT_OR_SLANG.has(word) ? count / 2000 : count) + 1) / 51) + 3;
  const mixed = 0.65 * heard + 0.35 * (BY_SIZE.get(size) as number);
  return CHILDRENS_WORDS.has(word) ? Math.max(mixed, CHILDRENS_FLOOR) : mixed;
}

/** Common words whose capitals in subtitles are mostly a name. */
const NAME_FIRST: ReadonlySet<string> = new Set(
  'bill brown char doe drew grant lance lane major mark miss mod van west'.split(' '),
);
