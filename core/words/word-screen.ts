import type { Phoneme } from '../language/phonemes.ts';
import type { Screened, WordScreen } from './screen.ts';
import { heard } from './screen-ear.ts';
import {
  categoryIndexOf,
  decodeScreen,
  isStopMark,
  markAt,
  reachOf,
  SCREEN_CATEGORIES,
  type ScreenCategory,
  type ScreenData,
  type ScreenTable,
} from './screen-format.ts';
import { makeRun, type Run, saltOf, sumRun } from './screen-hash.ts';
import { lettersExactly, lettersSeen } from './screen-letters.ts';
import {
  closesSyllable,
  firstVowelOf,
  LOOSE,
  lastVowelOf,
  letterStems,
  opensSyllable,
  soundStems,
} from './screen-stems.ts';

/**
 * The screen itself. A word is brought into a few forms: its letters exactly
 * and as seen (screen-letters), its sounds as a class hears them (screen-ear).
 * Each form and its base before an ending are looked up by hash; so are the
 * halves of a longer word, for the gravest entries. A spelling that was reviewed
 * itself ends the search at once, whether listed or found harmless; the sounds
 * of a harmless word, and the base of a word that is asked about, end it before
 * slips and halves are tried. Some thirty look-ups a word, no allocation.
 * Comparing with every entry by edit distance was rejected: it is far slower,
 * and it stops *duck*.
 *
 * Words of more than 60 letters or sounds are judged by their first 60.
 */
export function createWordScreen(data: ScreenData): WordScreen {
  const table = decodeScreen(data);
  const exact = makeRun();
  const letters = makeRun();
  const plain = makeRun();
  const full = makeRun();
  const stems = new Uint8Array(8);

  function judge(word: string, sounds: readonly Phoneme[]): Screened {
    const exactCount = lettersExactly(word, exact.codes);
    sumRun(exact, exactCount);
    if (markAt(table, exact, 0, exactCount, HARMLESS_LETTERS) >= 0) return CLEAR;

    const letterCount = lettersSeen(word, letters.codes);
    sumRun(letters, letterCount);
    const own = markAt(table, letters, 0, letterCount, LETTERS);
    if (own > 0) return resultOf(own, 'spelled');
    const letterBases = letterStems(letters.codes, letterCount, stems);
    const seen = strictest(table, letters, stems, letterBases, LETTERS);
    if (isStopMark(seen)) return resultOf(seen, 'spelled');
    const seenHalf = seen > 0 ? 0 : halfOf(table, letters, letterCount, stems, letterBases, true);
    if (seenHalf > 0) return resultOf(seenHalf, 'spelled');

    const plainCount = heard.plain(sounds, plain.codes);
    sumRun(plain, plainCount);
    const spelledEd = endsInEd(exact.codes, exactCount);
    const bases = soundStems(plain.codes, plainCount, spelledEd, stems);
    const said = strictest(table, plain, stems, bases, PLAIN);
    if (isStopMark(said)) return resultOf(said, 'sounds');
    if (seen === 0 && markAt(table, plain, 0, plainCount, HARMLESS_SOUNDS) < 0) {
      const slip = strictest(table, plain, stems, bases, SLIPS);
      if (slip > 0) return resultOf(slip, 'sounds');
      if (isOneSyllable(plain.codes, plainCount)) return mildest(seen, said);
      const fullCount = heard.full(sounds, full.codes);
      sumRun(full, fullCount);
      const fullBases = soundStems(full.codes, fullCount, spelledEd, stems);
      const half = halfOf(table, full, fullCount, stems, fullBases, false);
      if (half > 0) return resultOf(half, 'sounds');
    }
    return mildest(seen, said);
  }

  return { judge };
}

const HARMLESS_LETTERS = saltOf('harmless-letters');
const HARMLESS_SOUNDS = saltOf('harmless-sounds');
const LETTERS = saltOf('letters');
const PLAIN = saltOf('plain');
const SLIPS = saltOf('slips');
const HALVES = saltOf('halves');
const LETTER_HALVES = saltOf('letter-halves');

/** Halves are syllables: three to five sounds, or four to six letters. */
const SHORTEST = 3;
const LONGEST = 5;

const CLEAR: Screened = { verdict: 'clear', category: null, reason: null };

const nameByCategory: Readonly<Record<ScreenCategory, string>> = {
  profanity: 'a swear word',
  sexual: 'a word for adults',
  body: 'a private body word',
  slur: 'a slur',
  hate: 'a word of hate',
  drugs: 'a drug word',
  violence: 'a violent word',
  death: 'a word about death',
  insult: 'an insult',
  bathroom: 'a bathroom word',
  alcohol: 'a word for alcohol',
  religion: 'a sacred word',
  romance: 'a word that makes a class giggle',
};

type How = 'spelled' | 'sounds';

/** All results there are, by category and verdict, made once. */
const results: Readonly<Record<How, readonly Screened[]>> = {
  spelled: resultsFor((name) => `looks like ${name}`),
  sounds: resultsFor((name) => `sounds like ${name}`),
};

function resultsFor(sentence: (name: string) => string): readonly Screened[] {
  return SCREEN_CATEGORIES.flatMap((category) =>
    (['ask', 'stop'] as const).map((verdict) => ({
      verdict,
      category,
      reason: sentence(nameByCategory[category]),
    })),
  );
}

function resultOf(mark: number, how: How): Screened {
  return results[how][categoryIndexOf(mark) * 2 + (isStopMark(mark) ? 1 : 0)] as Screened;
}

/** What is left when nothing stops a word: what is asked about its letters, or its sounds. */
function mildest(seen: number, said: number): Screened {
  if (seen > 0) return resultOf(seen, 'spelled');
  return said > 0 ? resultOf(said, 'sounds') : CLEAR;
}

/** Such a word has no halves. */
function isOneSyllable(codes: Uint8Array, count: number): boolean {
  return lastVowelOf(codes, count, false) <= firstVowelOf(codes, count, false);
}

/** The strictest mark of a word and its bases (`ends[0]` is the word's end); 0 when there is none. */
function strictest(
  table: ScreenTable,
  run: Run,
  ends: Uint8Array,
  endCount: number,
  salt: number,
): number {
  let ask = 0;
  for (let i = 0; i < endCount; i++) {
    const end = (ends[i] as number) % LOOSE;
    const mark = markAt(table, run, 0, end, salt);
    if (mark <= 0 || (i > 0 && reachOf(mark) === 0)) continue;
    if (salt === SLIPS && markAt(table, run, 0, end, HARMLESS_SOUNDS) >= 0) continue;
    if (isStopMark(mark)) return mark;
    if (ask === 0 && end === ends[i]) ask = mark;
  }
  return ask;
}

/** The mark of a first or last syllable that may not stand there; 0 when there is none. */
function halfOf(
  table: ScreenTable,
  run: Run,
  count: number,
  ends: Uint8Array,
  endCount: number,
  letters: boolean,
): number {
  const { codes } = run;
  const extra = letters ? 1 : 0;
  const salt = letters ? LETTER_HALVES : HALVES;
  const firstVowel = firstVowelOf(codes, count, letters);
  const lastVowel = lastVowelOf(codes, count, letters);
  if (lastVowel <= firstVowel) return 0;
  for (let i = 0; i < endCount; i++) {
    const end = (ends[i] as number) % LOOSE;
    for (let size = SHORTEST + extra; size <= LONGEST + extra; size++) {
      const from = end - size;
      if (from <= firstVowel) break;
      const mark = markAt(table, run, from, end, salt);
      if (mark > 0 && (letters || opensSyllable(codes, from))) return mark;
    }
  }
  for (let size = SHORTEST + extra; size <= LONGEST + extra && size <= lastVowel; size++) {
    const mark = markAt(table, run, 0, size, salt);
    if (mark > 0 && (letters || closesSyllable(codes, size))) return mark;
  }
  return 0;
}

function endsInEd(codes: Uint8Array, count: number): boolean {
  return count > 2 && codes[count - 1] === 4 && codes[count - 2] === 5;
}
