import type { BoardModel } from '../core/boards/board-model.ts';

/**
 * The same model as a mixed-integer program in CPLEX LP text, for any general
 * solver: binary b, v, e for the cards; z ≤ b, z ≤ v, z ≤ e for each weighted
 * combination; b + v + e ≤ 2 for each forbidden one.
 */
export function makeLinearProgram(model: BoardModel): string {
  const { sizes, weights, forbidden, limits, pinned } = model;
  const gains: string[] = [];
  const rules: string[] = [];
  const bounds: string[] = [];
  for (let b = 0, at = 0; b < sizes[0]; b++) {
    for (let v = 0; v < sizes[1]; v++) {
      for (let e = 0; e < sizes[2]; e++, at++) {
        if (forbidden[at]) rules.push(`b${b} + v${v} + e${e} <= 2`);
        if (!weights[at]) continue;
        gains.push(`${weights[at]} z${at}`);
        rules.push(`z${at} - b${b} <= 0`, `z${at} - v${v} <= 0`, `z${at} - e${e} <= 0`);
        bounds.push(`0 <= z${at} <= 1`);
      }
    }
  }
  const names = ['b', 'v', 'e'].map((letter, pile) =>
    Array.from({ length: sizes[pile] as number }, (_, card) => `${letter}${card}`),
  );
  names.forEach((cards, pile) => {
    rules.push(`${cards.join(' + ')} <= ${limits[pile]}`);
    for (const card of pinned[pile] ?? []) rules.push(`${cards[card]} = 1`);
  });
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
