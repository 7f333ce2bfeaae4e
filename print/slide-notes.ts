/** What the teacher reads beneath a slide: what is asked now, whether the word is real, what comes next. */

import type { Flip } from '../core/boards/shapes/board.ts';
import { lettersShown } from '../core/language/card-id.ts';
import { type SoundStyle, soundLabel } from '../core/language/phonemes.ts';

/** How a run is shown: the row at once, or a sound at a time. */
export const SLIDE_BLENDINGS = ['whole', 'by-sound'] as const;
export type SlideBlending = (typeof SLIDE_BLENDINGS)[number];

/** What a click does: it moves the line on the slide, or goes to a slide where it has moved. */
export const SLIDE_CLICKS = ['line', 'slide'] as const;
export type SlideClicks = (typeof SLIDE_CLICKS)[number];

/** How words are told of. */
export interface Telling {
  readonly style: SoundStyle;
  /** A few words of meaning; null when none is at hand. */
  readonly meaningOf: (word: string) => string | null;
}

/** Before the first word: how the slides are run. */
export function openingNotes(
  run: readonly Flip[],
  blending: SlideBlending,
  clicks: SlideClicks,
  telling: Telling,
): string {
  const real = run.filter(({ kind }) => kind === 'real').length;
  const [first] = run;
  return lines(
    `Blending drill: ${run.length} ${run.length === 1 ? 'word' : 'words'}, ${real} real.`,
    blending === 'whole'
      ? 'One click shows the cards: point to each, the children say its sound. The next click draws the line: sweep your finger, they read the word.'
      : 'Each click opens a card with the line under it: the children say its sound. The last click draws the line under the whole word: they read it.',
    clicks === 'line'
      ? 'If nothing moves on a slide, save the slides again with one for each click.'
      : null,
    'Thumbs up for a real word.',
    'When a word breaks, stop: my turn, our turn, your turn. Then go on.',
    first ? `First: ${told(first, telling)}` : null,
  );
}

/** A word whose clicks are all on one slide. */
export function wordNotes(
  run: readonly Flip[],
  place: number,
  blending: SlideBlending,
  telling: Telling,
): string {
  return lines(
    `${place + 1} of ${run.length}: ${told(run[place] as Flip, telling)}`,
    blending === 'whole'
      ? 'Point to each card: they say its sound. Click and sweep your finger under the row: they read the word.'
      : 'They say the sound of each card: a click opens the next. The last click draws the line: sweep your finger, they read the word.',
    nextOf(run, place, telling),
  );
}

/** While the sounds of a word are said: `card` counts from 0, null for all of them. */
export function soundNotes(
  run: readonly Flip[],
  place: number,
  card: number | null,
  telling: Telling,
): string {
  const flip = run[place] as Flip;
  const said = card === null ? null : flip.cards[card];
  return lines(
    `${place + 1} of ${run.length}: ${told(flip, telling)}`,
    said === null || said === undefined
      ? 'Point to each card: they say its sound. Then click.'
      : `They say the sound of ${lettersShown(said)}. Then click.`,
    nextOf(run, place, telling),
  );
}

/** While the word is read. */
export function sweepNotes(run: readonly Flip[], place: number, telling: Telling): string {
  return lines(
    `${place + 1} of ${run.length}: ${told(run[place] as Flip, telling)}`,
    'Sweep your finger under the row: they read the word.',
    nextOf(run, place, telling),
  );
}

/** After the last word. */
export function closingNotes(run: readonly Flip[]): string {
  return lines(
    run.length === 1 ? 'That was the word.' : `That was all ${run.length}.`,
    'Note down what broke while you remember it.',
  );
}

/** `ship: real word, a vessel …` or `mip: nonsense word, /mĭp/`. */
function told({ word, kind, sounds }: Flip, { style, meaningOf }: Telling): string {
  if (kind === 'nonsense') return `${word}: nonsense word, ${soundLabel(sounds, style)}`;
  const meaning = meaningOf(word);
  return `${word}: real word${meaning === null ? '' : `, ${meaning}`}`;
}

function nextOf(run: readonly Flip[], place: number, telling: Telling): string {
  const next = run[place + 1];
  if (!next) return 'This is the last word.';
  const now = run[place] as Flip;
  const turned = next.cards.flatMap((id, at) => {
    const before = now.cards[at];
    return before === undefined || before === id
      ? []
      : [`${lettersShown(before)} turns to ${lettersShown(id)}`];
  });
  const how = turned.length === 0 ? '' : ` (${turned.join(', ')})`;
  return `Next${how}: ${told(next, telling)}`;
}

function lines(...parts: readonly (string | null)[]): string {
  return parts.filter((part) => part !== null).join('\n');
}
