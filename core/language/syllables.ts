/**
 * Syllable division as taught: one vowel sound to a syllable, divided by the
 * patterns VC/CV, V/CV, VC/V and V/V.
 *
 * Method: between each pair of vowel cards, a morpheme edge decides if there
 * is one; otherwise the consonant cards between them do. One consonant goes to
 * the right (V/CV) unless the vowel before it is short and stressed (VC/V: the
 * sound shows that the syllable is closed); two or more divide before the
 * longest legal onset that leaves the first syllable its consonant. Time is
 * linear in the cards. A division by legal onsets alone (maximal onset) was
 * tried and rejected: it cuts *ro·bin*, which no teacher would.
 */
import type { Correspondence } from './correspondence.ts';
import { isVowelPhoneme, type Phoneme } from './phonemes.ts';
import type { Morphemes, Stress } from './pronunciation.ts';

/** A card laid over its letters. */
export interface LaidCard {
  readonly card: Correspondence;
  readonly letters: readonly number[];
}

/** The same, with the stress of its vowel (-1 without one). */
export interface PlacedCard extends LaidCard {
  readonly stress: Stress;
}

/** Letter positions where syllables begin, the first (0) left out, ascending. */
export function syllableBreaks(
  word: string,
  placed: readonly PlacedCard[],
  morphemes: Morphemes,
): readonly number[] {
  const breaks: number[] = [];
  let previous = -1;
  for (const [index, { card }] of placed.entries()) {
    if (!isNucleus(card)) continue;
    if (previous >= 0) {
      const at = divide(word, placed, previous, index, morphemes);
      if (at > (breaks.at(-1) ?? 0)) breaks.push(at);
    }
    previous = index;
  }
  return breaks;
}

/** Whether a card holds a vowel sound, and so makes a syllable; the m of *prism* makes none in print. */
export function isNucleus(card: Correspondence): boolean {
  return card.kind !== 'consonant' && card.phonemes.some(isVowelPhoneme);
}

function divide(
  word: string,
  placed: readonly PlacedCard[],
  left: number,
  right: number,
  morphemes: Morphemes,
): number {
  const before = placed[left] as PlacedCard;
  const after = placed[right] as PlacedCard;
  const between = placed.slice(left + 1, right);
  const start = (before.letters[0] as number) + 1;
  const end = after.letters[0] as number;
  const edge = morphemes.breaks.findLast((at) => at >= start && at <= end);
  if (edge !== undefined && (between.length > 0 || edge >= end) && !keepsLWithBase(between, edge)) {
    return moveOffDouble(word, between, edge);
  }
  const prefix = TRANS.test(word) && start <= 5 && end >= 5;
  if (prefix) return 5;
  if (between.length === 0) return end - (sharesItsR(before.card) ? 1 : 0);
  const first = between[0] as PlacedCard;
  const last = between[between.length - 1] as PlacedCard;
  const stable = between.find(({ card }) => STABLE_FINALS.has(card.grapheme));
  if (stable && stable === last) {
    return stable.card.grapheme === 'ssi' ? (stable.letters[1] as number) : firstLetter(stable);
  }
  if (after.card.kind === 'consonant-le') return beforeConsonantLe(last);
  if (isDoubled(first) || SPLIT_PAIRS.has(first.card.grapheme)) return firstLetter(first) + 1;
  const opener = placed[left - 1];
  if (opener && STABLE_FINALS.has(opener.card.grapheme) && first.card.grapheme === 'n') {
    return lastLetter(first) + 1;
  }
  if (isOpenPrefix(word, before) && isLegalOnset(between)) return firstLetter(first);
  const closes = isShort(before.card, placed[left - 1]?.card) && before.stress > 0;
  if (between.length === 1) {
    if (ENDS_ONLY.has(first.card.grapheme)) return lastLetter(first) + 1;
    if (!closes) return firstLetter(first);
    if (first.card.kind === 'consonant-e') return firstLetter(first) + 1;
    return first.card.grapheme.startsWith('qu') ? firstLetter(first) + 1 : lastLetter(first) + 1;
  }
  const keep = closes || !isLiquidCluster(between) ? 1 : 0;
  for (let index = keep; index < between.length - 1; index++) {
    if (isLegalOnset(between.slice(index))) return firstLetter(between[index] as PlacedCard);
  }
  return firstLetter(last);
}

/** run·ning splits the doubled letter; buzz·ing keeps the base's own pair together. */
function moveOffDouble(word: string, between: readonly PlacedCard[], edge: number): number {
  const last = between.at(-1);
  if (!last || !isDoubled(last) || lastLetter(last) !== edge - 1) return edge;
  if (!/[aeiouy]/.test(word[edge] ?? '')) return edge;
  return /[lsfz]/.test(word[edge - 1] as string) ? edge : edge - 1;
}

/** daw·dling, jug·glers: the l of a consonant-le base goes on with the ending. */
function keepsLWithBase(between: readonly PlacedCard[], edge: number): boolean {
  const last = between.at(-1);
  return between.length > 1 && last?.card.grapheme === 'l' && lastLetter(last) === edge - 1;
}

/** hur·ry splits its pair; he·ro and pi·rate keep their long vowel open. */
function sharesItsR(card: Correspondence): boolean {
  return /rr$/.test(card.grapheme) || LONG_R.has(card.id);
}

const LONG_R: ReadonlySet<string> = new Set(['er=IH+R', 'ir=AY+R', 'ur=UH+R', 'ur=Y+UH+R']);

function beforeConsonantLe(last: PlacedCard): number {
  if (last.card.grapheme === 'ck') return lastLetter(last) + 1;
  const split = isDoubled(last) || SPLIT_PAIRS.has(last.card.grapheme);
  return split ? firstLetter(last) + 1 : firstLetter(last);
}

/** trans·late, trans·fer: a prefix whose base is often no word. */
const TRANS = /^trans[^aeiouy]/;

/** Pairs with one sound that divide like two letters: mus·cle, as·cend, ex·cite. */
const SPLIT_PAIRS: ReadonlySet<string> = new Set(['sc', 'xc']);

/** Cards that begin a final syllable such as -tion, -cial, -sion. */
const STABLE_FINALS: ReadonlySet<string> = new Set([
  'ti',
  'ci',
  'si',
  'ssi',
  'sci',
  'xi',
  'ce',
  'gi',
  'di',
]);

/** Cards that never open a syllable. */
const ENDS_ONLY: ReadonlySet<string> = new Set(['ck', 'tch', 'dge', 'dg', 'ng', 'x', 'mb']);

const ONSETS: ReadonlySet<string> = new Set(
  (
    'bl br cl cr dr dw fl fr gl gr pl pr sc sch scr shr sk sl sm sn sp sph spl spr squ st str sw ' +
    'su thr tr tw chr phr phl qu cy'
  ).split(' '),
);

/** be·tween, re·spond, de·stroy: a prefix with its open e. */
function isOpenPrefix(word: string, { card, letters }: PlacedCard): boolean {
  return card.id === 'e=IY' && /^(b|d|r|pr)e$/.test(word.slice(0, (letters[0] as number) + 1));
}

function isLegalOnset(cards: readonly PlacedCard[]): boolean {
  const spelling = cards.map(({ card }) => card.grapheme).join('');
  // The s of island is silent and stays behind; the t of castle closes its syllable.
  if (cards[0]?.card.phonemes.length === 0 && spelling === 'sl') return false;
  return ONSETS.has(spelling) && !(spelling === 'st' && cards[1]?.card.phonemes.length === 0);
}

function isLiquidCluster(cards: readonly PlacedCard[]): boolean {
  return cards.length === 2 && isLegalOnset(cards) && /[lru]$/.test(cards[1]?.card.grapheme ?? '');
}

function isDoubled({ card }: PlacedCard): boolean {
  return card.kind === 'double';
}

const SHORT_SOUNDS: ReadonlySet<Phoneme> = new Set(['AE', 'EH', 'IH', 'AH', 'UH']);

/** Whether a vowel card says a short sound, so that a stressed one closes its syllable. */
function isShort(card: Correspondence, previous: Correspondence | undefined): boolean {
  if (card.kind === 'r-vowel') return false;
  const sound = card.phonemes[0] as Phoneme;
  if (SHORT_SOUNDS.has(sound)) return true;
  return sound === 'AA' && (card.grapheme === 'o' || previous?.grapheme === 'qu');
}

function firstLetter({ letters }: PlacedCard): number {
  return letters[0] as number;
}

function lastLetter({ letters }: PlacedCard): number {
  return letters[letters.length - 1] as number;
}
