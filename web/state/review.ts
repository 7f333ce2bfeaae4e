/**
 * What the class's own evidence says the group at work should practice today,
 * and why; nothing while nothing was noted of the group, so that a first
 * warm-up is made as it was before there was any evidence.
 */

import { computed } from '@preact/signals';
import type { PartWishes } from '../../core/drills/drill-spec.ts';
import type { CardId } from '../../core/language/card-id.ts';
import { planReview, type ReviewChoice } from '../../core/learners/review.ts';
import { makeReason } from '../../core/learners/review-reason.ts';
import { brokenLately, practiced } from './broken-lately.ts';
import { knowledge, modelDay, observations } from './knowledge.ts';
import { newestCards, newestSight } from './newest-cards.ts';
import { group } from './open-class.ts';
import { notHeard } from './papers.ts';
import { progress, taught } from './progress.ts';
import { isSchool } from './school-days.ts';
import { sightWords } from './sight.ts';
import { thresholds } from './thresholds.ts';

/** How many cards each part takes; on the board as many as leave room for others (common practice, no source). */
const COUNTS = { visual: 12, auditory: 6, blending: 8, sight: 12 };

const review = computed(() => {
  const { id } = group.value;
  if (!observations.value.some(({ groups }) => groups.includes(id))) return null;
  return planReview({
    observations: observations.value,
    knowledge: knowledge.value,
    group: id,
    taught: [...taught.value.correspondences, ...sightWords.value],
    newest: [...newestCards(progress.value), ...newestSight(progress.value)],
    back: practiced(brokenLately.value),
    day: modelDay(),
    thresholds: thresholds.value,
    isSchool: isSchool.value,
    counts: COUNTS,
  });
});

/** What each part of the group's next warm-up should practice; null while nothing was noted of it. */
export function reviewedParts(): PartWishes | null {
  const plan = review.peek();
  if (plan === null) return null;
  const cardsOf = (choices: readonly ReviewChoice[]) => choices.map(({ card }) => card);
  return {
    visual: [...cardsOf(plan.visual), ...cardsOf(plan.sight.read)],
    auditory: [
      ...[...new Set([...notHeard.peek().keys(), ...cardsOf(plan.auditory)])].slice(
        0,
        COUNTS.auditory,
      ),
      ...cardsOf(plan.sight.spell),
    ],
    blending: cardsOf(plan.blending),
  };
}

/** The cards that the board should make the most of, by id, most wanted first; none while nothing was noted. */
export const wantedOnBoard = computed<readonly CardId[]>(
  () => review.value?.blending.map(({ card }) => card) ?? [],
);

/** Why a card is worth reading today, as she reads it: `missed 4 of 9 on Tuesday`; null while nothing was noted. */
export function reasonToRead(id: CardId): string | null {
  const why = review.value?.why.read.get(id);
  return why ? makeReason(why, modelDay()) : null;
}

/** Why a sound with these spellings is worth asking for, by the spelling that needs it most; else null. */
export function reasonToSpell(ids: readonly CardId[]): string | null {
  const missed = ids.find((id) => notHeard.value.has(id));
  if (missed) {
    const many = notHeard.value.get(missed) ?? 0;
    return `not heard on ${many === 1 ? 'one paper' : `the papers of ${many} children`}: count the sounds first`;
  }
  const why = review.value?.why.spell;
  // The reasons stand in the order of need.
  const neediest = why && [...why].find(([id]) => ids.includes(id));
  return neediest ? makeReason(neediest[1], modelDay()) : null;
}
