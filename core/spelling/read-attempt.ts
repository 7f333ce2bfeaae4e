/**
 * Reads what a child wrote for a word that was said: card by card, was the sound heard, and was it
 * spelled as the word has it. Every pronunciation of the word is tried and the cheapest kept. What the
 * verdicts rest on, and where they are doubtful, is in docs/spelling.md.
 */
import type { CardId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import type { Reading } from '../language/reading.ts';
import type { Taught } from '../language/taught.ts';
import { isSchwaCard } from '../words/needs.ts';
import type {
  AddedLetters,
  Answer,
  AttemptReading,
  CardVerdict,
  Fact,
  ReadWith,
} from './attempt.ts';
import { COSTS } from './costs.ts';
import type { Explained } from './explain.ts';
import { type Laid, type LaidLetters, layLetters } from './lay-letters.ts';
import { letterSequences } from './letter-sequences.ts';
import { mayStand } from './may-stand.ts';
import { differenceOf } from './phonetics.ts';
import { habitMissed } from './spelling-habit.ts';
import { type Target, targetsOf } from './target.ts';
import { type Written, writtenAt } from './voices.ts';

/**
 * Reads the letters `wrote` against the word said, in any of its `readings` (the ordinary one first,
 * never empty). Letters other than a–z are not read; nothing at all or a dash is a blank, question marks
 * alone are illegible.
 */
export function readAttempt(
  readings: readonly Reading[],
  wrote: string,
  known: ReadWith,
): AttemptReading {
  const [ordinary] = readings as readonly [Reading];
  const { word } = ordinary;
  const letters = lettersOf(wrote);
  if (letters === '') return unread(ordinary, wrote, known, blankOrNot(wrote));
  const isRight = letters === lettersOf(word);
  const isFamiliar = !isRight && known.isFamiliar(letters);
  let best: { reading: Reading; targets: readonly Target[]; laid: LaidLetters } | null = null;
  let written: readonly (readonly Written[])[] | null = null;
  for (const reading of readings) {
    if (isRight) return right(reading, wrote, known);
    const targets = targetsOf(reading);
    written ??= writtenAt(letters, isFamiliar);
    const laid = cheaper(layLetters(targets, letters, written), backwards(reading, letters));
    if (!best || laid.cost < best.laid.cost) best = { reading, targets, laid };
  }
  const { reading, targets, laid } = best as NonNullable<typeof best>;
  const cards = targets.map((target, at) => {
    const one = laid.laid.find(({ card, added }) => !added && card === at) as Laid;
    return verdictOf(target, one, reading, at, known.taught);
  });
  return {
    word,
    wrote,
    answer: isFamiliar && heardOf(cards) <= ANOTHER_WORD ? 'another-word' : 'attempt',
    reading,
    cards,
    added: addedOf(laid.laid),
    sequences: letterSequences(lettersOf(word), letters),
    wordRight: false,
  };
}

/** A word that children know, of which no more than this share was heard, is another word. */
const ANOTHER_WORD = 1 / 3;

function lettersOf(text: string): string {
  return text
    .slice(0, 2 * MOST_LETTERS)
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .slice(0, MOST_LETTERS);
}

/** No word of a list is half as long; what a child wrote beyond that is not read. */
const MOST_LETTERS = 60;

function blankOrNot(wrote: string): Answer {
  return /[^\s\-–—_.]/.test(wrote) ? 'illegible' : 'blank';
}

function cheaper(one: LaidLetters, other: LaidLetters | null): LaidLetters {
  return other && other.cost < one.cost ? other : one;
}

/** *saw* for *was*: every card has its own letters, in the wrong place. */
function backwards({ word, cards }: Reading, letters: string): LaidLetters | null {
  if (word.length < 3 || letters !== [...word].reverse().join('')) return null;
  const explained: Explained = {
    verdict: 'order',
    cost: COSTS.backwards,
    row: null,
    fact: null,
    habit: null,
  };
  const laid = cards.map(({ grapheme }, card): Laid => {
    return { card, letters: grapheme, explained, added: false };
  });
  return { laid, cost: COSTS.backwards };
}

function right(reading: Reading, wrote: string, { taught }: ReadWith): AttemptReading {
  const of = reading.word.length + 1;
  return {
    word: reading.word,
    wrote,
    answer: 'attempt',
    reading,
    cards: reading.cards.map(({ id, grapheme }) => ({
      ...blankVerdict(id, reading.word, taught),
      letters: grapheme,
      verdict: 'same',
      heard: true,
    })),
    added: [],
    sequences: { right: of, of },
    wordRight: true,
  };
}

/** Nothing to read: every card left out, none of them heard or not. */
function unread(
  reading: Reading,
  wrote: string,
  { taught }: ReadWith,
  answer: Answer,
): AttemptReading {
  return {
    word: reading.word,
    wrote,
    answer,
    reading,
    cards: reading.cards.map(({ id }) => blankVerdict(id, reading.word, taught)),
    added: [],
    sequences: letterSequences(lettersOf(reading.word), ''),
    wordRight: false,
  };
}

function blankVerdict(id: CardId, word: string, taught: Taught | null): CardVerdict {
  return {
    id,
    letters: '',
    verdict: 'left-out',
    heard: false,
    instead: null,
    said: null,
    mayStand: null,
    taught: isTaught(id, word, taught),
    insteadTaught: null,
    habit: null,
    fact: null,
  };
}

function verdictOf(
  target: Target,
  { letters, explained }: Laid,
  reading: Reading,
  index: number,
  taught: Taught | null,
): CardVerdict {
  const blank = blankVerdict(target.id, reading.word, taught);
  if (!explained) {
    return { ...blank, heard: target.phonemes.length === 0, fact: whyLost(target) };
  }
  const { verdict, row, fact, habit } = explained;
  const written = { ...blank, letters, verdict, fact, heard: verdict !== 'other-sound' };
  if (verdict === 'other-sound' && row) {
    return { ...written, instead: row.id, said: row.phonemes, fact: difference(target, row) };
  }
  if (verdict !== 'same-sound') return written;
  const ends = index === reading.cards.length - 1;
  return {
    ...written,
    instead: row?.id ?? null,
    mayStand: row && fact === null ? mayStand(reading, index, row) : false,
    insteadTaught: row ? isTaught(row.id, reading.word, taught) : null,
    habit: habit ?? (target.card ? habitMissed(target.card, letters, ends) : null),
  };
}

function difference(target: Target, row: NonNullable<Explained['row']>): Fact {
  const [said, more] = target.phonemes;
  const [other, others] = row.phonemes;
  if (said === undefined || other === undefined || more || others) return 'several';
  return differenceOf(said, other);
}

/** Why a sound is easily lost: a nasal or a liquid before a consonant, a part of a cluster. */
function whyLost({ phonemes, isVowel, before, after }: Target): Fact | null {
  const [sound] = phonemes;
  if (sound === undefined || isVowel || phonemes.length > 1) return null;
  const vowel = /^[AEIOU]/;
  const consonantAfter = after !== null && !vowel.test(after);
  if (/^(M|N|NG)$/.test(sound) && consonantAfter) return 'nasal-lost';
  if (/^[LR]$/.test(sound) && consonantAfter) return 'liquid-lost';
  const consonantBefore = before !== null && !vowel.test(before);
  return consonantAfter || consonantBefore ? 'cluster-part' : null;
}

function isTaught(id: CardId, word: string, taught: Taught | null): boolean | null {
  if (!taught) return null;
  const card = correspondenceById.get(id);
  if (taught.correspondences.has(id) || taught.irregularWords.has(word)) return true;
  return card !== undefined && isSchwaCard(card) && taught.habits.has('schwa');
}

function heardOf(cards: readonly CardVerdict[]): number {
  return cards.filter(({ heard }) => heard).length / cards.length;
}

/** Added letters side by side are one addition. */
function addedOf(laid: readonly Laid[]): readonly AddedLetters[] {
  const found: { letters: string; before: number }[] = [];
  for (const [at, { card, letters, added }] of laid.entries()) {
    if (!added) continue;
    const last = found.at(-1);
    if (last && laid[at - 1]?.added) last.letters += letters;
    else found.push({ letters, before: card });
  }
  return found;
}
