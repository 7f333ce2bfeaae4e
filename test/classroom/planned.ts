import type { CardId } from '../../core/language/card-id.ts';
import { knowledgeFrom } from '../../core/learners/knowledge.ts';
import { planReview, type ReviewChoice } from '../../core/learners/review.ts';
import { AUDITORY, FOCUS, type Practice, type Today, VISUAL } from './classroom.ts';

/** What `planReview` would practice today, from what was seen until yesterday. */
export function planned({ day, taught, fresh, observations, group }: Today): Practice {
  const plan = planReview({
    observations,
    knowledge: knowledgeFrom(observations),
    group,
    taught,
    newest: taught.slice(-2),
    day,
    counts: { visual: VISUAL, auditory: AUDITORY, blending: FOCUS, sight: 0 },
  });
  const cardsOf = (choices: readonly ReviewChoice[]) => choices.map(({ card }) => card);
  return {
    visual: withFresh(cardsOf(plan.visual), fresh),
    auditory: withFresh(cardsOf(plan.auditory), fresh),
    blending: withFresh(cardsOf(plan.blending), fresh),
  };
}

/** Today's card is in every part, as it is when all is left to chance: lengths stay the same. */
function withFresh(cards: readonly CardId[], fresh: readonly CardId[]): readonly CardId[] {
  const missing = fresh.filter((card) => !cards.includes(card));
  return [...missing, ...cards.slice(0, cards.length - missing.length)];
}
