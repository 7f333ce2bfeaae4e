import type { Lexicon } from './lexicon.ts';

/**
 * The same question of a word of a list, each answer kept once it is found: a list never changes. One look-up
 * after that. For questions whose answers are few or small.
 */
export function keptByWord<Answer>(
  ask: (index: number, lexicon: Lexicon) => Answer,
): (index: number, lexicon: Lexicon) => Answer {
  const byList = new WeakMap<Lexicon, Map<number, Answer>>();
  return (index, lexicon) => {
    let kept = byList.get(lexicon);
    if (!kept) {
      kept = new Map();
      byList.set(lexicon, kept);
    }
    const known = kept.get(index);
    if (known !== undefined) return known;
    const answer = ask(index, lexicon);
    kept.set(index, answer);
    return answer;
  };
}
