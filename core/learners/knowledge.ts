import { markingOf } from './belief/marking.ts';
import type { WordParts } from './belief/spots.ts';
import type { Known } from './known.ts';
import type { Observation } from './observation.ts';
import { startTracker } from './tracker.ts';
import { wordParts } from './word-parts.ts';

/** What a class knows: reading from letters to sounds, and spelling from sounds to letters. */
export interface Knowledge {
  readonly read: Known;
  readonly spell: Known;
}

/**
 * What observations, in any order, have shown. The same observations give the
 * same knowledge, but for the order of those of one day, which is kept.
 * Linear in their number; sixty thousand take a fraction of a second.
 */
export function knowledgeFrom(observations: readonly Observation[]): Knowledge {
  const read = startTracker(markingOf(observations, 'read'), wordParts);
  const spell = startTracker(markingOf(observations, 'spell'), loose);
  for (const observation of inOrder(observations)) {
    (observation.task === 'read' ? read : spell).observe(observation);
  }
  return { read: read.known, spell: spell.known };
}

/** The spellings of a sound make no word: they stand in no places and ask for no habits. */
function loose(cards: readonly string[]): WordParts {
  return { places: cards.map(() => null), habits: cards.map(() => []) };
}

function inOrder(observations: readonly Observation[]): readonly Observation[] {
  let day = Number.NEGATIVE_INFINITY;
  for (const observation of observations) {
    if (observation.day < day) return observations.toSorted((one, other) => one.day - other.day);
    day = observation.day;
  }
  return observations;
}
