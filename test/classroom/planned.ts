import type { CardId } from '../../core/language/card-id.ts';
import { knowledgeFrom } from '../../core/learners/knowledge.ts';
import { planReview, type ReviewChoice } from '../../core/learners/review.ts';
import { AUDITORY, FOCUS, type Practice, type Today, VISUAL } from './classroom.ts';

/** What `planReview` would practice today, from what was seen until yesterday. */
export function planned(today: Today): Practice {
  return practiceOf(today, today.taught.slice(-2), (choices) => choices.map(({ card }) => card));
}

/** The same without what is new before all else: a new card is one that is needed like the others. */
export function plannedWithoutNew(today: Today): Practice {
  return practiceOf(today, [], (choices) => choices.map(({ card }) => card));
}

/** The same without need: what is not new is drawn by chance from all that was taught, as many cards. */
export function plannedWithoutNeed(today: Today): Practice {
  return practiceOf(today, today.taught.slice(-2), (choices) => {
    const kept = choices.flatMap(({ card, why }) => (why.code === 'new' ? card : []));
    const pool = today.taught.filter((card) => !kept.includes(card));
    while (kept.length < choices.length && pool.length > 0) {
      kept.push(...pool.splice(today.draw.below(pool.length), 1));
    }
    return kept;
  });
}

function practiceOf(
  { day, taught, fresh, observations, group }: Today,
  newest: readonly CardId[],
  cardsOf: (choices: readonly ReviewChoice[]) => readonly CardId[],
): Practice {
  const plan = planReview({
    observations,
    knowledge: knowledgeFrom(observations),
    group,
    taught,
    newest,
    day,
    counts: { visual: VISUAL, auditory: AUDITORY, blending: FOCUS, sight: 0 },
  });
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
