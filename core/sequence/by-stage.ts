import type { CardId } from '../language/card-id.ts';
import type { Sequence } from './sequence.ts';
import { stepOf } from './step-of.ts';

/** Cards that one stage of an order teaches. */
export interface StageCards {
  /** Empty for cards that the order does not teach. */
  readonly stage: string;
  readonly cards: readonly CardId[];
}

/** Cards under the stages that teach them, both in the order of teaching; those of no step come last. */
export function byStage(sequence: Sequence, cards: readonly CardId[]): readonly StageCards[] {
  const none = sequence.steps.length + 1;
  const stepped = cards
    .map((card) => ({ card, step: stepOf(sequence, { kind: 'card', id: card }) ?? none }))
    .sort((one, other) => one.step - other.step);
  const stages: { stage: string; cards: CardId[] }[] = [];
  for (const { card, step } of stepped) {
    const stage = sequence.steps[step - 1]?.stage ?? '';
    const last = stages.at(-1);
    if (last?.stage === stage) last.cards.push(card);
    else stages.push({ stage, cards: [card] });
  }
  return stages;
}
