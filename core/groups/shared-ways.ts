import type { MapRow } from '../facts/class-map.ts';
import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { WhoChild } from '../learners/estimate.ts';
import { type Trouble, troublesOf } from '../story/child-story.ts';
import type { SlipPattern } from '../story/slip-pattern.ts';

/** A way of going wrong that some children share. */
export interface SharedWay {
  readonly pattern: SlipPattern;
  /** By child id, in the order of the rows. */
  readonly children: readonly ChildId[];
  /** The cards on which any of them goes wrong so, those of most children first. */
  readonly cards: readonly CardId[];
}

/** Every way of going wrong that has a name, from what was seen of these children; the one of most children first. */
export function sharedWays(rows: readonly MapRow<WhoChild>[]): readonly SharedWay[] {
  const ways = new Map<string, Gathered>();
  const all = rows.map(({ who, cells }) => ({
    who,
    troubles: troublesOf(cells).flatMap(byCard),
  }));
  // Where of one child it was not said which of two consonants was dropped, it is told of all that one was.
  const isUnsaid = all.some(({ troubles }) => troubles.some(({ way }) => way === 'drops-one'));
  for (const { who, troubles } of all) {
    for (const { way: own, sound, cards } of troubles) {
      const way = isUnsaid && (own === 'drops-first' || own === 'drops-second') ? 'drops-one' : own;
      if (way === 'misses') continue;
      const key = way === 'says' ? `${way} ${sound} ${cards}` : way;
      const shared: Gathered = ways.get(key) ?? {
        pattern: { way, sound },
        children: [],
        cards: new Map(),
      };
      ways.set(key, shared);
      if (!shared.children.includes(who.id)) shared.children.push(who.id);
      for (const card of cards) shared.cards.set(card, (shared.cards.get(card) ?? 0) + 1);
    }
  }
  return [...ways.values()]
    .sort((one, other) => other.children.length - one.children.length)
    .map(({ pattern, children, cards }) => ({
      pattern,
      children,
      cards: [...cards].sort(([, one], [, other]) => other - one).map(([card]) => card),
    }));
}

/** What is said for another sound is told card by card: children who say the same for different cards share nothing. */
function byCard(trouble: Trouble): readonly Trouble[] {
  return trouble.way === 'says'
    ? trouble.cards.map((card) => ({ ...trouble, cards: [card] }))
    : [trouble];
}

interface Gathered {
  readonly pattern: SlipPattern;
  readonly children: ChildId[];
  readonly cards: Map<CardId, number>;
}
