import type { AuditorySound, Drill, Flip } from '../engine.ts';
import { type Piece, piecesOf } from './pieces.ts';

/** What the class does at one moment of the warm-up; the three parts come in this order. */
export type Moment =
  | { readonly part: 'visual'; readonly id: string; readonly pieces: readonly Piece[] }
  | { readonly part: 'auditory'; readonly sound: AuditorySound; readonly pieces: readonly Piece[] }
  | { readonly part: 'blending'; readonly flip: Flip; readonly pieces: readonly Piece[] };

/** The whole warm-up, moment by moment. In the auditory part the pieces are the spellings. */
export function momentsOf(drill: Drill): readonly Moment[] {
  const whole = (id: string): Piece => ({ id, part: 'whole' });
  return [
    ...drill.visual.map((id): Moment => ({ part: 'visual', id, pieces: [whole(id)] })),
    ...drill.auditory.map(
      (sound): Moment => ({ part: 'auditory', sound, pieces: sound.spellings.map(whole) }),
    ),
    ...drill.run.map((flip): Moment => ({ part: 'blending', flip, pieces: piecesOf(flip.cards) })),
  ];
}
