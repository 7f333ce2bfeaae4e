import type { MapRow } from '../facts/class-map.ts';
import type { CardId } from '../language/card-id.ts';
import type { SoundStyle } from '../language/phonemes.ts';
import type { WhoChild } from '../learners/estimate.ts';
import { cardsSaid, listSaid } from '../story/card-said.ts';
import type { SlipPattern } from '../story/slip-pattern.ts';
import { waySaid } from '../story/way-said.ts';
import { needsOf } from './needs.ts';
import { sharedWays } from './shared-ways.ts';

/** What children have in common: a way of going wrong, cards that were missed, or nothing that was seen. */
export type Together =
  | {
      readonly code: 'way';
      readonly pattern: SlipPattern;
      /** How many of them go wrong so, of how many, and on which cards. */
      readonly count: number;
      readonly size: number;
      readonly cards: readonly CardId[];
    }
  | {
      readonly code: 'missed';
      readonly size: number;
      /** By how many of them each was missed lately, the most first. */
      readonly cards: readonly { readonly card: CardId; readonly count: number }[];
    }
  | { readonly code: 'nothing-missed'; readonly size: number; readonly read: number };

/**
 * Why these children are together, from what was seen of them: the way of going
 * wrong that most of them share, when half do and two at least; else the cards
 * that most of them missed lately; else that nobody missed anything.
 */
export function whyTogether(rows: readonly MapRow<WhoChild>[]): Together {
  const size = rows.length;
  const [shared] = sharedWays(rows);
  const count = shared?.children.length ?? 0;
  if (shared !== undefined && count >= 2 && count * 2 >= size) {
    return { code: 'way', size, count, pattern: shared.pattern, cards: shared.cards };
  }
  const missed = needsOf(rows, 0).filter(({ missedBy }) => missedBy.length > 0);
  if (missed.length === 0) {
    const read = rows.filter(({ cells }) => cells.some(({ seen }) => seen.last.length > 0)).length;
    return { code: 'nothing-missed', size, read };
  }
  const cards = missed
    .slice(0, MOST_CARDS)
    .map(({ card, missedBy }) => ({ card, count: missedBy.length }));
  return { code: 'missed', size, cards };
}

/** The reason as a sentence: ‘5 of 6 drop the second consonant in st, bl and pr.’ */
export function togetherSaid(together: Together, style: SoundStyle): string {
  const { size } = together;
  if (together.code === 'way') {
    const { count, pattern, cards } = together;
    return `${count} of ${size} ${waySaid(pattern, cardsSaid(cards, style, 'or'), 'many', style)}.`;
  }
  if (together.code === 'missed') {
    const missed = together.cards.map(
      ({ card, count }) => `${cardsSaid([card], style)} (${count} of ${size})`,
    );
    return `Missed lately: ${listSaid(missed)}.`;
  }
  return together.read === 0
    ? 'Nothing was noted of them alone yet.'
    : `Nobody here missed anything lately; ${together.read} of ${size} have read alone.`;
}

const MOST_CARDS = 3;
