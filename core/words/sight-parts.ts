import { correspondenceById } from '../language/correspondences.ts';
import type { CardReading, Reading } from '../language/reading.ts';
import type { Taught } from '../language/taught.ts';
import type { Lexicon } from './lexicon.ts';
import { isSchwaCard } from './needs.ts';

/** A run of letters of a word: what it says by the rules that were taught, or what is to be learned by heart. */
export interface SightPart {
  readonly letters: string;
  readonly byHeart: boolean;
}

/**
 * A word known by sight in runs of letters, from left to right: those that say what the group has been
 * taught, and the part to learn, which no rule gives or whose card was not taught yet. A word that the
 * list has not is to be learned whole.
 */
export function sightParts(word: string, taught: Taught, lexicon: Lexicon): readonly SightPart[] {
  const index = lexicon.indexOf(word);
  const reading = index < 0 ? undefined : lexicon.readings(index)[0];
  if (reading === undefined) return [{ letters: word, byHeart: true }];
  return runsOf(reading, (card) => isByHeart(card, taught));
}

/** The reading's letters, those beside each other that are alike joined into one run. */
function runsOf({ word, cards }: Reading, isLearned: (card: CardReading) => boolean): SightPart[] {
  const learned = new Set(cards.filter(isLearned).flatMap(({ letters }) => letters));
  const runs: SightPart[] = [];
  for (let at = 0; at < word.length; at++) {
    const byHeart = learned.has(at);
    const last = runs.at(-1);
    if (last?.byHeart === byHeart) {
      runs[runs.length - 1] = { letters: last.letters + word.charAt(at), byHeart };
    } else runs.push({ letters: word.charAt(at), byHeart });
  }
  return runs;
}

function isByHeart({ id, regular }: CardReading, { correspondences, habits }: Taught): boolean {
  if (!regular) return true;
  const card = correspondenceById.get(id);
  if (card && isSchwaCard(card)) return !habits.has('schwa');
  return !correspondences.has(id);
}
