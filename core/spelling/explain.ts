import type { TableRow } from '../language/row.ts';
import type { Fact, SpellingHabit, Verdict } from './attempt.ts';
import { compositesOf } from './composites.ts';
import { COSTS } from './costs.ts';
import { isNamed, NAME_SOUNDS, SYLLABIC } from './letter-names.ts';
import { missesSilentE } from './spelling-habit.ts';
import type { Target } from './target.ts';
import { isExchanged, isTurned } from './turned.ts';
import type { Written } from './voices.ts';

/** One way to take letters as a card: what they are to it, and what that costs. */
export interface Explained {
  readonly verdict: Verdict;
  readonly cost: number;
  /** The row written, where it is one of the table and another than the card's. */
  readonly row: TableRow | null;
  readonly fact: Fact | null;
  readonly habit: SpellingHabit | null;
}

/** The cheapest way to take one written grapheme as a card; null when nothing in it fits. */
export function explain(target: Target, written: Written): Explained | null {
  const { grapheme } = target;
  const { letters, split } = written;
  if (letters === grapheme) return SAME;
  if (!split && isTurned(grapheme, letters)) return TURNED;
  if (missesSilentE(target.card, letters)) return E_MISSED;
  let best: Explained | null = speechFact(target, written);
  for (const { row, by } of written.voices) {
    const far = target.closeness.of(row);
    if (far === Infinity) continue;
    const cost =
      far === 0
        ? by === 'rule'
          ? COSTS.sameSound
          : by === 'name'
            ? COSTS.letterName
            : COSTS.outOfPlace
        : COSTS.otherSound + COSTS.apart * far + (by === 'rule' ? 0 : COSTS.letterName);
    if (best && cost >= best.cost) continue;
    best = {
      verdict: far === 0 ? 'same-sound' : 'other-sound',
      cost,
      row,
      fact: far === 0 && by === 'name' ? 'letter-name' : null,
      habit: null,
    };
  }
  return best;
}

/** The letters of several graphemes taken as one card: exchanged, turned, or sound by sound. */
export function explainLetters(target: Target, letters: string): Explained | null {
  const { grapheme, split } = target;
  if (!split && isTurned(grapheme, letters)) return TURNED;
  if (compositesOf(target).has(letters)) return BY_SOUNDS;
  const isOutOfOrder = split
    ? letters === grapheme.replace('_', '')
    : isExchanged(grapheme, letters);
  return isOutOfOrder ? ORDER : null;
}

const plain = (verdict: Verdict, cost: number, fact: Fact | null = null): Explained => ({
  verdict,
  cost,
  row: null,
  fact,
  habit: null,
});
const SAME = plain('same', 0);
const TURNED = plain('turned', COSTS.turned);
const ORDER = plain('order', COSTS.orderWithin);
const BY_SOUNDS = plain('same-sound', COSTS.habitMissed);
const E_MISSED: Explained = { ...plain('same-sound', COSTS.habitMissed), habit: 'silent-e' };
const AFFRICATED = plain('same-sound', COSTS.speechFact, 'affricated');
const AFTER_S = plain('same-sound', COSTS.speechFact, 'after-s');
const FLAPPED = plain('same-sound', COSTS.speechFact, 'flapped');
const WEAK = plain('same-sound', COSTS.speechFact, 'weak-vowel');
const NAMED = plain('same-sound', COSTS.letterName, 'letter-name');
const SYLLABIC_LETTER = plain('same-sound', COSTS.letterName, 'syllabic');

/**
 * What good ears write: in *train* and *dragon* t and d are said far back, as in *chain* and *jam*; after
 * s no breath follows a stop, so that *stop* sounds like *sdop*; between vowels Americans say t as a quick
 * d; in weak syllables short i and e fall together (Read 1971, 1975; Treiman 1993, from memory).
 */
function speechFact(target: Target, { letters, named }: Written): Explained | null {
  const { phonemes, before, after, weak } = target;
  const [sound, ...more] = phonemes;
  if (sound === undefined) return null;
  if (more.length === 0) {
    if (after === 'R' && sound === 'T' && /^(ch|tch)$/.test(letters)) return AFFRICATED;
    if (after === 'R' && sound === 'T' && letters === 'h' && named) return AFFRICATED;
    if (after === 'R' && sound === 'D' && /^(j|dge)$/.test(letters)) return AFFRICATED;
    if (after === 'R' && sound === 'D' && letters === 'g' && named) return AFFRICATED;
    if (before === 'S' && unbreathed.get(sound) === letters) return AFTER_S;
    if (sound === 'T' && /^dd?$/.test(letters) && isBetweenVowels(target)) return FLAPPED;
    if (weak && /^[aeiou]$/.test(letters) && isWeakVowel(sound, letters)) return WEAK;
  }
  if (!named) return null;
  if (isNamed(NAME_SOUNDS, letters, phonemes)) return NAMED;
  return isNamed(SYLLABIC, letters, phonemes) ? SYLLABIC_LETTER : null;
}

const unbreathed: ReadonlyMap<string, string> = new Map([
  ['P', 'b'],
  ['T', 'd'],
  ['K', 'g'],
]);

/** water, little: a vowel before, and after it a weak one or a syllabic l. */
function isBetweenVowels({ before, after, place }: Target): boolean {
  const vowel = /^[AEIOU]/;
  return place === 'inside' && vowel.test(before ?? '') && vowel.test(after ?? '');
}

/** The schwa is any letter's; short i and e are one in most American speech where they are weak. */
function isWeakVowel(sound: string, letters: string): boolean {
  return sound === 'AX' || ((sound === 'IH' || sound === 'EH') && /^[ei]$/.test(letters));
}
