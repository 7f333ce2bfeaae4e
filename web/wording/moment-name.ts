import { sightIn } from '../../core/drills/sight.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import type { Moment } from '../../core/warm-up/moments.ts';
import type { Standing } from '../../core/warm-up/standing.ts';
import { cardName } from './card-name.ts';

/** What lies on the stage, in words for those who cannot see it. */
export function momentName(
  moment: Moment | undefined,
  { spellings, paused, dictating, turn }: Standing,
): string {
  if (!moment) return 'The end';
  if (paused) return 'Blank sheet';
  if (dictating !== null) return 'A quiet sheet: write the word';
  const whose = turn === null ? '' : `${turnNames[turn]}. `;
  return `${whose}${shownName(moment, spellings)}`;
}

const turnNames = { my: 'My turn', our: 'Our turn', your: 'Your turn' } as const;

function shownName(moment: Moment, spellings: boolean): string {
  if (moment.part === 'visual') return `Card: ${cardName(moment.id)}`;
  if (moment.part === 'blending') {
    return moment.flip.cards.map((id) => correspondenceById.get(id)?.grapheme ?? id).join(', ');
  }
  if (!spellings) {
    const isWord = sightIn(moment.sound) !== null;
    return `A quiet sheet: say the ${isWord ? 'word' : 'sound'}`;
  }
  return `Spellings: ${moment.sound.spellings.map(cardName).join('; ')}`;
}
