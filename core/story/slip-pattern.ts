import type { CardAsRead } from '../facts/card-reading.ts';
import { type CardId, isSightId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isPhoneme } from '../language/phonemes.ts';

/** In which way a card goes wrong; those of one way make one clause of a sentence. */
export const SLIP_WAYS = [
  'says',
  'drops-second',
  'drops-first',
  'drops-one',
  'misses-second',
  'misses-first',
  'leaves-out-after',
  'leaves-out',
  'letter-name',
  'added-vowel',
  'swapped',
  'sounds-out',
  'another-word',
  'misses',
] as const;
export type SlipWay = (typeof SLIP_WAYS)[number];

/** A way and, of `says`, what is said. */
export interface SlipPattern {
  readonly way: SlipWay;
  /** ARPABET symbols; null for every other way. */
  readonly sound: string | null;
}

/** The way in which a missed card went wrong; `misses` where nothing that has a name was noted. */
export function slipPattern({ heard, word, at }: CardAsRead): SlipPattern {
  if (heard === 'sounded-out') return named('sounds-out');
  if (heard === 'another-word' && isSightId(word[at] ?? '')) return named('another-word');
  const card = correspondenceById.get(word[at] as CardId);
  const sounds = card?.phonemes ?? [];
  const isCluster = card?.kind === 'cluster';
  const brokeAt = isCluster && card.parts.length === 2 ? card.parts.indexOf(partIn(heard)) : -1;
  if (brokeAt >= 0) return named(brokeAt === 0 ? 'misses-first' : 'misses-second');
  if (heard === 'left-out') {
    if (isCluster) return named('drops-one');
    return named(
      isConsonant(word[at]) && isConsonant(word[at - 1]) ? 'leaves-out-after' : 'leaves-out',
    );
  }
  if (heard === 'letter-name' || heard === 'added-vowel' || heard === 'swapped') {
    return named(heard);
  }
  if (heard === null || !heard.split(' ').every(isPhoneme)) return named('misses');
  if (isCluster && sounds.length === 2) {
    if (heard === sounds[0]) return named('drops-second');
    if (heard === sounds[1]) return named('drops-first');
  }
  return { way: 'says', sound: heard };
}

/** The card of `letter l=L`, which says at which of its letters a cluster broke; else an id of none. */
function partIn(heard: string | null): CardId {
  return (heard?.startsWith('letter ') ? heard.slice('letter '.length) : '') as CardId;
}

function named(way: Exclude<SlipWay, 'says'>): SlipPattern {
  return { way, sound: null };
}

/** Whether a card is a consonant with a sound, one alone or several. */
function isConsonant(id: CardId | undefined): boolean {
  const kind = id === undefined ? undefined : correspondenceById.get(id)?.kind;
  return kind === 'consonant' || kind === 'double' || kind === 'digraph' || kind === 'trigraph';
}
