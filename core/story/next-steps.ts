import { type CardId, graphemeOf } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isPhoneme, type Phoneme, type SoundStyle, soundLabel } from '../language/phonemes.ts';
import { cardsSaid, listSaid } from './card-said.ts';
import type { ChildStory, Trouble } from './child-story.ts';

/**
 * What to do next for a child, by the way in which its cards go wrong: one step for each trouble of its
 * sentence, the most pressing first (common practice, no source). Empty where nothing was missed lately.
 */
export function nextSteps(
  { troubles }: Pick<ChildStory, 'troubles'>,
  style: SoundStyle,
): readonly string[] {
  return troubles.map((trouble) => stepFor(trouble, style));
}

/** What to do with a child of whom there is nothing to mend: by what was seen of it, if anything was. */
export function goOnSaid(
  { asked, stumbled, beyond }: Pick<ChildStory, 'asked' | 'stumbled' | 'beyond'>,
  name: string,
): string {
  if (beyond.open > 0) {
    return `Nothing was missed lately of what the group was taught; what was, is beyond its step. Call on ${name} for what is new.`;
  }
  if (asked > 0) return `Nothing was missed lately. Call on ${name} for what is new.`;
  return stumbled
    ? `A word went wrong, and it was not said at which card. Hear ${name} again, and say where.`
    : `Call on ${name} in a warm-up, or take a short check.`;
}

function stepFor({ way, sound, cards }: Trouble, style: SoundStyle): string {
  const named = cardsSaid(cards, style);
  switch (way) {
    case 'drops-second':
    case 'drops-first':
    case 'drops-one':
    case 'misses-second':
    case 'misses-first':
      return `Read ${named} one sound at a time: ${inParts(cards)}.`;
    case 'says':
      return `Say ${soundsSaid(sound, style)} and ${ownSounds(cards, style)} side by side, then turn ${named} among words with both.`;
    case 'leaves-out-after':
    case 'leaves-out':
      return `Touch each card while saying its sound, so that ${named} ${cards.length > 1 ? 'are' : 'is'} not passed over.`;
    case 'letter-name':
      return `Ask for the sound of ${named}, not the name: ${ownSounds(cards, style)}.`;
    case 'added-vowel':
      return `Say ${named} short, with no vowel behind: ${ownSounds(cards, style)}.`;
    case 'swapped':
      return `Touch each card in its order around ${named} while saying its sound, then read on.`;
    case 'sounds-out':
      return `Show ${named}, read it at once together, then spell it aloud.`;
    case 'another-word':
      return `Point to the part of ${named} that is learned by heart, spell it aloud, and read it again among other words.`;
    case 'misses':
      return `Model ${named}, say ${cards.length > 1 ? 'them' : 'it'} together, then hear ${cards.length > 1 ? 'them' : 'it'} alone.`;
  }
}

/** `s, t, then st`, of the first two clusters. */
function inParts(cards: readonly CardId[]): string {
  const clusters = cards.filter((id) => (correspondenceById.get(id)?.parts.length ?? 0) > 1);
  const parted = (clusters.length > 0 ? clusters : cards).slice(0, 2).map((id) => {
    const parts = correspondenceById.get(id)?.parts ?? [];
    return parts.length > 1
      ? `${parts.map(graphemeOf).join(', ')}, then ${graphemeOf(id)}`
      : graphemeOf(id);
  });
  return parted.join('; ');
}

function ownSounds(cards: readonly CardId[], style: SoundStyle): string {
  const own = cards
    .map((id) => correspondenceById.get(id)?.phonemes ?? [])
    .filter((sounds) => sounds.length > 0)
    .map((sounds) => soundLabel(sounds, style));
  return listSaid([...new Set(own)].slice(0, MOST_SOUNDS));
}

const MOST_SOUNDS = 3;

function soundsSaid(sound: string | null, style: SoundStyle): string {
  return soundLabel((sound ?? '').split(' ').filter(isPhoneme) as readonly Phoneme[], style);
}
