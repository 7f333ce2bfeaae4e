import { type CardId, graphemeOf, isCardId, lettersShown, soundsOf } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isPhoneme, type SoundStyle, soundLabel } from '../language/phonemes.ts';
import type { CardFacts, HeardInstead } from './card-facts.ts';

/** What was heard instead of a card, in a few words: `said /ĭ/`, `left it out`, `left out l`, `missed its l`. */
export function heardSaid(heard: string, card: CardId, style: SoundStyle): string {
  const fixed = said[heard];
  if (fixed !== undefined) return fixed;
  const missed = letterIn(heard);
  if (missed !== null) return `missed its ${missed}`;
  const sounds = heard.split(' ');
  if (!sounds.every(isPhoneme)) return `said ${heard}`;
  const dropped = droppedLetters(sounds, card);
  return dropped === null
    ? `said ${soundLabel(sounds, style)}`
    : `left out ${dropped.join(' and ')}`;
}

/** The same, as short as a cell of a map has room for: `/ĭ/`, `no l`, `name`; what she wrote herself is cut. */
export function heardShort(heard: string, card: CardId, style: SoundStyle): string {
  const fixed = short[heard];
  if (fixed !== undefined) return fixed;
  const missed = letterIn(heard);
  if (missed !== null) return `not ${missed}`;
  const sounds = heard.split(' ');
  if (!sounds.every(isPhoneme)) return heard.length > SHORT ? `${heard.slice(0, SHORT)}…` : heard;
  const dropped = droppedLetters(sounds, card);
  return dropped === null ? soundLabel(sounds, style) : `no ${dropped.join(' ')}`;
}

/** Letters of a word that she wrote herself. */
const SHORT = 6;

/** All that was heard, the most frequent first: `said /ĕ/ 3 times, left it out once`; empty for nothing. */
export function allHeardSaid(
  { card, heard }: Pick<CardFacts, 'card' | 'heard'>,
  style: SoundStyle,
): string {
  return heard
    .map(
      ({ heard: one, count }: HeardInstead) => `${heardSaid(one, card, style)} ${timesSaid(count)}`,
    )
    .join(', ');
}

/** `once`, `twice`, `3 times`. */
function timesSaid(count: number): string {
  if (count === 1) return 'once';
  return count === 2 ? 'twice' : `${count} times`;
}

/** The letter of `letter t=T`, which says that a card broke at one of its letters; else null. */
function letterIn(heard: string): string | null {
  const card = heard.startsWith(LETTER) ? heard.slice(LETTER.length) : '';
  return isCardId(card) ? lettersShown(card) : null;
}

const LETTER = 'letter ';

/** Of a cluster of which some sounds were heard, in their order: the letters of those that were not; else null. */
function droppedLetters(heard: readonly string[], id: CardId): readonly string[] | null {
  const card = correspondenceById.get(id);
  if (card?.kind !== 'cluster') return null;
  let at = 0;
  const dropped = card.parts.filter((part) => {
    const sounds = soundsOf(part);
    const isKept = sounds.length > 0 && sounds.every((sound, n) => heard[at + n] === sound);
    if (isKept) at += sounds.length;
    return !isKept;
  });
  const isSome = at === heard.length && dropped.length > 0 && dropped.length < card.parts.length;
  return isSome ? dropped.map(graphemeOf) : null;
}

const said: Readonly<Record<string, string>> = {
  'letter-name': 'said the letter’s name',
  'left-out': 'left it out',
  'added-vowel': 'added a vowel',
  swapped: 'swapped two sounds',
  'another-word': 'said another word',
  'sounded-out': 'sounded it out',
  nothing: 'said nothing',
  other: 'said something else',
};

const short: Readonly<Record<string, string>> = {
  'letter-name': 'name',
  'left-out': 'out',
  'added-vowel': '+ uh',
  swapped: 'swap',
  'another-word': 'word',
  nothing: 'silent',
  other: 'other',
};
