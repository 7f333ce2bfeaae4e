import type { Part } from '../../core/log/event.ts';
import type { Moment } from '../../core/warm-up/moments.ts';

const things: Readonly<Record<Part, string>> = {
  visual: 'card',
  auditory: 'sound',
  blending: 'word',
};

/** Which one of its part it is: `word 12`. */
export function momentPlace({ part, place }: Pick<Moment, 'part' | 'place'>): string {
  return `${things[part]} ${place + 1}`;
}
