import type { CardId } from '../language/card-id.ts';
import type { Taught } from '../language/taught.ts';

/**
 * Cards that a reader knows without their own step, for reading alone: the e
 * of *else*, *house*, *please* and *freeze* says nothing, as children know from
 * silent e, so s or z with any silent e will do. Each with the sets of cards of
 * which one is enough. Common practice, no source.
 */
export const IMPLIED: ReadonlyMap<CardId, readonly (readonly CardId[])[]> = new Map(
  (
    [
      ['se=S', 's=S'],
      ['se=Z', 's=Z'],
      ['ze=Z', 'z=Z'],
    ] as const
  ).map(([card, letter]) => [
    card,
    (['a_e=EY', 'i_e=AY', 'o_e=OW'] as const).map((silentE) => [letter, silentE]),
  ]),
);

/** Whether a reader knows a card: it was taught, or what it follows from was. */
export function isKnownCard(id: CardId, { correspondences }: Taught): boolean {
  if (correspondences.has(id)) return true;
  return IMPLIED.get(id)?.some((ids) => ids.every((other) => correspondences.has(other))) ?? false;
}
