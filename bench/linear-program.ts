import type { BoardModel } from '../core/boards/search/board-model.ts';

/**
 * The same model as a mixed-integer program in CPLEX LP text, for any general
 * solver: binary b, v, e for the cards; z ≤ b, z ≤ v, z ≤ e for each weighted
 * combination; b + v + e ≤ 2 for each forbidden one; likewise for more piles.
 */
export function makeLinearProgram(model: BoardModel): string {
  const { sizes, weights, forbidden, limits, pinned } = model;
  const gains: string[] = [];
  const rules: string[] = [];
  const bounds: string[] = [];
  const nameOf = (pile: number, card: number): string => `${'bvefgh'[pile]}${card}`;
  const cardsAt = (index: number): readonly string[] => {
    let rest = index;
    const names: string[] = [];
    for (let pile = sizes.length - 1; pile >= 0; pile--) {
      const size = sizes[pile] as number;
      names.unshift(nameOf(pile, rest % size));
      rest = Math.floor(rest / size);
    }
    return names;
  };
  for (let at = 0; at < weights.length; at++) {
    if (!forbidden[at] && !weights[at]) continue;
    const cards = cardsAt(at);
    if (forbidden[at]) rules.push(`${cards.join(' + ')} <= ${cards.length - 1}`);
    if (!weights[at]) continue;
    gains.push(`${weights[at]} z${at}`);
    for (const card of cards) rules.push(`z${at} - ${card} <= 0`);
    bounds.push(`0 <= z${at} <= 1`);
  }
  const names = sizes.map((size, pile) =>
    Array.from({ length: size }, (_, card) => nameOf(pile, card)),
  );
  names.forEach((cards, pile) => {
    rules.push(`${cards.join(' + ')} <= ${limits[pile]}`);
    for (const card of pinned[pile] ?? []) rules.push(`${cards[card]} = 1`);
  });
  for (const group of model.pinGroups ?? []) {
    rules.push(`${group.map(([pile, card]) => nameOf(pile, card)).join(' + ')} >= 1`);
  }
  return [
    'Maximize',
    ` value: ${gains.join(' + ') || '0 b0'}`,
    'Subject To',
    ...rules.map((rule, at) => ` r${at}: ${rule}`),
    'Bounds',
    ...bounds.map((bound) => ` ${bound}`),
    'Binary',
    ` ${names.flat().join(' ')}`,
    'End',
  ].join('\n');
}
