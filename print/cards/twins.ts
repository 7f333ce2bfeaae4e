import type { PaperCard } from './paper-card.ts';

/**
 * Cards without their twins: of those that look alike (s of _sun_ and s of _nose_), the first. For cards
 * that show letters alone; a keyword or a back tells them apart.
 */
export function withoutTwins(cards: readonly PaperCard[]): readonly PaperCard[] {
  const seen = new Set<string>();
  return cards.filter(({ shape, parts }) => {
    const look = `${shape} ${parts.join(' ')}`;
    const isNew = parts.length === 0 || !seen.has(look);
    seen.add(look);
    return isNew;
  });
}
