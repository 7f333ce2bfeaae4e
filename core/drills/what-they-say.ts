import { type CardId, isSightId } from '../language/card-id.ts';
import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { type SoundStyle, soundLabel } from '../language/phonemes.ts';

/** One sound that children say to a card, and its keyword; null when it has none. */
export interface SaidSound {
  readonly sound: string;
  readonly keyword: string | null;
}

/**
 * What children say to a card once they have named its letters: its sound, then
 * every other taught sound of the same letters; the letters of a cluster one by one. A word known by
 * sight is read at once, then spelled.
 */
export function whatTheySay(
  id: CardId,
  taught: ReadonlySet<CardId>,
  notation: SoundStyle,
): readonly SaidSound[] {
  if (isSightId(id)) return [{ sound: 'read it, spell it', keyword: null }];
  const card = correspondenceById.get(id);
  if (!card) return [];
  const parts = card.parts.flatMap((part) => correspondenceById.get(part) ?? []);
  if (card.kind === 'cluster') return parts.map((part) => saidOf(part, notation));
  const others = [...taught]
    .flatMap((other) => correspondenceById.get(other) ?? [])
    .filter(({ id: other, grapheme }) => other !== id && grapheme === card.grapheme);
  const all = [card, ...others].map((each) => saidOf(each, notation));
  return all.filter(({ sound }, place) => all.findIndex((one) => one.sound === sound) === place);
}

function saidOf({ phonemes, keyword, grapheme }: Correspondence, notation: SoundStyle): SaidSound {
  return { sound: soundLabel(phonemes, notation, grapheme), keyword };
}
