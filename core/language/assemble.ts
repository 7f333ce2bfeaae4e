/**
 * Builds a Reading from what is stored of it: the word, its card ids and its
 * syllable breaks. Everything else follows by rule: which letters a card
 * covers, what type each syllable is, and whether each card is regular there.
 */

import { type CardId, graphemeOf, soundsOf } from './card-id.ts';
import type { Correspondence } from './correspondence.ts';
import { correspondenceById } from './correspondences.ts';
import type { Phoneme } from './phonemes.ts';
import type { CardReading, Reading, Syllable, SyllableType } from './reading.ts';
import { isRegular } from './regularity.ts';
import { isNucleus, type LaidCard } from './syllables.ts';

/**
 * The reading of `word` with these cards; `breaks` are letter positions where
 * syllables after the first begin. An id of the form `xy=?` (no row of the
 * table) covers the letters before the `=` and marks the reading as a
 * fallback. Throws when the cards do not spell the word: that is a defect.
 */
export function assembleReading(
  word: string,
  ids: readonly CardId[],
  breaks: readonly number[],
): Reading {
  const cards = ids.map(cardOf);
  const letters = placeLetters(word, cards);
  const placed = cards.map((card, index) => ({ card, letters: letters[index] as number[] }));
  const readings = placed.map(
    ({ card, letters }, index): CardReading => ({
      grapheme: card.grapheme,
      letters,
      phonemes: card.phonemes,
      id: ids[index] as CardId,
      regular: isRegular(word, placed, index, breaks),
    }),
  );
  return {
    word,
    sounds: cards.flatMap((card) => card.phonemes),
    cards: readings,
    syllables: syllablesOf(word, placed, breaks),
    fallback: cards.some((card) => !correspondenceById.has(card.id)),
  };
}

/** The table's card, or a one-off stand-in for letters that no row explains. */
function cardOf(id: CardId): Correspondence {
  const known = correspondenceById.get(id);
  if (known) return known;
  return {
    id,
    grapheme: graphemeOf(id),
    phonemes: soundsOf(id),
    kind: 'other-vowel',
    tier: 4,
    places: [],
    keyword: null,
    parts: [],
  };
}

/** Letter positions of each card. A split card's e is the first e after its consonant. */
function placeLetters(word: string, cards: readonly Correspondence[]): number[][] {
  const placed: number[][] = [];
  let at = 0;
  let split: number[] | null = null;
  for (const card of cards) {
    if (split && word[at] === 'e') {
      split.push(at++);
      split = null;
    }
    const isSplit = card.grapheme.includes('_');
    const length = isSplit ? 1 : card.grapheme.length;
    const letters = Array.from({ length }, (_, offset) => at + offset);
    if (word.slice(at, at + length) !== card.grapheme.slice(0, length)) break;
    at += length;
    placed.push(letters);
    if (isSplit) split = letters;
  }
  if (split && word[at] === 'e') split.push(at++);
  if (at !== word.length || placed.length !== cards.length) {
    throw new Error(`${cards.map((card) => card.id).join(' ')} does not spell ${word}`);
  }
  return placed;
}

function syllablesOf(
  word: string,
  placed: readonly LaidCard[],
  breaks: readonly number[],
): readonly Syllable[] {
  const starts = [0, ...breaks];
  return starts.map((from, index) => {
    const to = starts[index + 1] ?? word.length;
    return { from, to, type: syllableType(word, placed, from, to) };
  });
}

const STABLE = /^(ti|ci|si|ssi|sci|xi)=/;

function syllableType(
  word: string,
  placed: readonly LaidCard[],
  from: number,
  to: number,
): SyllableType {
  const inside = placed.filter(
    ({ letters }) => (letters[0] as number) >= from && (letters[0] as number) < to,
  );
  const nucleus = inside.find(({ card }) => isNucleus(card));
  if (!nucleus) return 'other';
  const { card, letters } = nucleus;
  if (card.kind === 'consonant-le') return 'cle';
  if (card.kind === 'r-vowel') return word.slice(letters[0], to).includes('r') ? 'r' : 'open';
  if (card.kind === 'silent-e') return 'vce';
  if (card.kind === 'vowel-team' || card.kind === 'diphthong') return 'team';
  const opener = inside[inside.indexOf(nucleus) - 1]?.card.id ?? '';
  if (STABLE.test(opener) || straddles(placed, from)) return 'other';
  const last = letters[letters.length - 1] as number;
  if (last + 1 >= to) return card.kind === 'ending' ? 'closed' : 'open';
  const coda = inside.slice(inside.indexOf(nucleus) + 1);
  if (LONG.has(card.phonemes.at(-1) as Phoneme) && hasDroppedE(coda, word.slice(to))) return 'vce';
  if (coda[0]?.card.kind === 'consonant-e' && card.phonemes[0] === 'AX') return 'other';
  return 'closed';
}

const LONG: ReadonlySet<Phoneme> = new Set(['EY', 'IY', 'AY', 'OW', 'UW']);

/** hoped, hik·ing, bath·ing: one consonant between the long vowel and the ending that took its e; sign·ing and roll·ing had none. */
function hasDroppedE(coda: readonly LaidCard[], rest: string): boolean {
  if (/^(?:(.)\1|gn|mb)$/.test(coda[0]?.card.grapheme ?? '')) return false;
  if (coda.length === 2) return coda[1]?.card.kind === 'ending';
  return (
    coda.length === 1 && coda[0]?.card.kind !== 'ending' && /^(e|ing|y|ish|ist|ize)/.test(rest)
  );
}

function straddles(placed: readonly LaidCard[], from: number): boolean {
  return placed.some(
    ({ card, letters }) => card.grapheme === 'ssi' && letters.includes(from) && letters[0] !== from,
  );
}
