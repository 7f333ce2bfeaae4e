import { lettersShown } from '../../core/language/card-id.ts';
import type { Part } from '../../core/log/event.ts';
import { cardsOf, isSightMoment, type Moment } from '../../core/warm-up/moments.ts';

const things: Readonly<Record<Part, string>> = {
  visual: 'card',
  auditory: 'sound',
  blending: 'word',
};

/** Which one of its part it is: `word 12`; of a word known by sight, which word. */
export function momentPlace(moment: Moment): string {
  const [id] = cardsOf(moment);
  if (id !== undefined && isSightMoment(moment)) return `the word “${lettersShown(id)}”`;
  return `${things[moment.part]} ${moment.place + 1}`;
}
