import type { Screen } from '../state/screens.ts';

/** What is said to a newcomer on one screen of her way to the first warm-up, and what else she may do there. */
export interface FirstRunStep {
  readonly number: number;
  readonly says: string;
  readonly aside?: { readonly name: string; readonly to: Screen };
}

/** The way to the first warm-up, by the screens that it leads over; the stage is its end. */
export const FIRST_RUN: Readonly<Partial<Record<Screen, FirstRunStep>>> = {
  learned: {
    number: 1,
    says: 'Drag the line down to the last thing you taught, or tap its step number. Then plan today’s warm-up, at the bottom of the page.',
    aside: { name: 'Add names first', to: 'class' },
  },
  class: {
    number: 2,
    says: 'Type the first names of your children, if you like. A warm-up needs none; names help you call on everyone and remember who needs what.',
    aside: { name: 'On to today’s warm-up', to: 'today' },
  },
  today: {
    number: 3,
    says: 'This is your warm-up: cards to show, sounds to say, words to blend. Tap anything to change it. When you are ready, start on the stage.',
  },
};
