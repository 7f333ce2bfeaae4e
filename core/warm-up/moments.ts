import type { Flip } from '../boards/shapes/board.ts';
import { ownersOf, type Piece, piecesOf } from '../boards/shapes/pieces.ts';
import type { AuditorySound, Drill } from '../drills/drill.ts';
import { type CardId, isSightId } from '../language/card-id.ts';

/**
 * What the class does at one moment of the warm-up; the three parts come in this
 * order. `place` counts from 0 within the part.
 */
export type Moment = { readonly place: number; readonly pieces: readonly Piece[] } & (
  | { readonly part: 'visual'; readonly id: CardId }
  | { readonly part: 'auditory'; readonly sound: AuditorySound }
  | { readonly part: 'blending'; readonly flip: Flip }
);

/** The whole warm-up, moment by moment. In the auditory part the pieces are the spellings. */
export function momentsOf(drill: Drill): readonly Moment[] {
  const whole = (id: CardId): Piece => ({ id, part: 'whole' });
  return [
    ...drill.visual.map(
      (id, place): Moment => ({ part: 'visual', place, id, pieces: [whole(id)] }),
    ),
    ...drill.auditory.map(
      (sound, place): Moment => ({
        part: 'auditory',
        place,
        sound,
        pieces: sound.spellings.map(whole),
      }),
    ),
    ...drill.run.map(
      (flip, place): Moment => ({
        part: 'blending',
        place,
        flip,
        pieces: piecesOf(flip.cards, flip.joints),
      }),
    ),
  ];
}

/** The cards that lie at a moment, by id, as the log keeps them. */
export function cardsOf(moment: Moment): readonly CardId[] {
  if (moment.part === 'visual') return [moment.id];
  return moment.part === 'auditory' ? moment.sound.spellings : moment.flip.cards;
}

/** Whether a word known by sight is up: to be read, or to be said and spelled. */
export function isSightMoment(moment: Moment): boolean {
  return moment.part !== 'blending' && cardsOf(moment).some(isSightId);
}

/** How many steps a row opens in when sounds come one at a time: one for each card. */
export function stepsOf(moment: Moment): number {
  return cardsOf(moment).length;
}

/** Which card, counted from 0, each piece of a row belongs to: a silent e to its split card. */
export function cardPlaces({ pieces }: Moment): readonly number[] {
  return ownersOf(pieces);
}
