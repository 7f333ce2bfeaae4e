import { type CardFacts, missedLast } from './card-facts.ts';
import { daySaid } from './day-said.ts';

/**
 * What was seen of a card, before anything is estimated: ‘Missed 2 of the last
 * 3. Right 4 of 7 since November 24.’
 */
export function seenSaid(seen: CardFacts): string {
  const { right, missed, unclear, last, since } = seen;
  const asked = right + missed;
  const from = since === null ? '' : ` since ${daySaid(since)}`;
  const aside =
    unclear === 0
      ? ''
      : ` In ${unclear} ${unclear === 1 ? 'word' : 'words'} more it was not said what went wrong.`;
  if (asked === 0) return unclear === 0 ? 'Not read yet.' : `Not read clearly yet.${aside}`;
  const lately = missedLast(seen);
  const recent =
    lately === 0 || asked <= last.length ? '' : `Missed ${lately} of the last ${last.length}. `;
  return `${recent}Right ${right} of ${asked}${from}.${aside}`;
}
