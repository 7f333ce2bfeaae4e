import { type CardId, graphemeOf } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isPhoneme, type SoundStyle, soundLabel } from '../language/phonemes.ts';
import type { CardFacts, HeardInstead } from './card-facts.ts';

/** What was heard instead of a card, in a few words: `said /ĭ/`, `left it out`, `left out l`. */
function heardSaid(heard: string, card: CardId, style: SoundStyle): string {
  const fixed = said[heard];
  if (fixed !== undefined) return fixed;
  const sounds = heard.split(' ');
  if (!sounds.every(isPhoneme)) return `said ${heard}`;
  const dropped = droppedLetter(heard, card);
  return dropped === null ? `said ${soundLabel(sounds, style)}` : `left out ${dropped}`;
}

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

/** Of a card of two consonants of which one sound was heard: the letter that was not. */
function droppedLetter(heard: string, id: CardId): string | null {
  const card = correspondenceById.get(id);
  if (card?.kind !== 'cluster' || card.phonemes.length !== 2) return null;
  const kept = (card.phonemes as readonly string[]).indexOf(heard);
  const part = kept < 0 ? undefined : card.parts[1 - kept];
  return part === undefined ? null : graphemeOf(part);
}

const said: Readonly<Record<string, string>> = {
  'letter-name': 'said the letter’s name',
  'left-out': 'left it out',
  'added-vowel': 'added a vowel',
  swapped: 'swapped two sounds',
  'another-word': 'said another word',
  nothing: 'said nothing',
  other: 'said something else',
};
