import type { CardId } from '../../language/card-id.ts';

/** What a run should be. Only the board can set limits to it. */
export interface RunWishes {
  readonly flips: number;
  /** Share of real words, 0 to 1; their number is rounded to the nearest. */
  readonly realShare: number;
  readonly seed: number;
  /** Spellings to be left out while the board has others: those of the last days. */
  readonly avoid?: ReadonlySet<string>;
  /** Cards whose words are to come as often as `focusShare` says. */
  readonly focus?: readonly string[];
  /** Share of flips that show a focus card, 0 to 1; without it they come as it happens. */
  readonly focusShare?: number;
  /** Cards of which one is to be shown in at least so large a share of the flips, as far as there are words. */
  readonly atLeast?: { readonly cards: readonly CardId[]; readonly share: number };
  /** Cards that are easily taken for each other, to be turned one into the other: b and d. */
  readonly contrasts?: readonly (readonly [CardId, CardId])[];
  /** Easier words first. */
  readonly rise?: boolean;
}
