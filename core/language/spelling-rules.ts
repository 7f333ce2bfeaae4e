/**
 * The rules of position and spelling that make a row of cards look English.
 * They judge what no one has written before: a real word is kept, whatever rule
 * it breaks (*gas*, *such*, *have*). Each rule names its source and its best
 * known exceptions, and is written so that a doubtful word is stopped: a board
 * has plenty of words.
 */
import { BEGINNING_RULES } from './beginning-rules.ts';
import { ENDING_RULES } from './ending-rules.ts';
import type { LaidSyllable } from './laid-syllable.ts';
import type { SpellingRule } from './spelling-rule.ts';
import { VOWEL_RULES } from './vowel-rules.ts';

/** Every rule, those of the beginning first; a word is stopped by the first it breaks. */
export const SPELLING_RULES: readonly SpellingRule[] = [
  ...BEGINNING_RULES,
  ...VOWEL_RULES,
  ...ENDING_RULES,
];

/** The rules a syllable breaks, in the order of the list; none when it may be built. */
export function brokenRules(
  syllable: LaidSyllable,
  rules: readonly SpellingRule[] = SPELLING_RULES,
): readonly SpellingRule[] {
  return rules.filter((rule) => rule.breaks(syllable));
}
