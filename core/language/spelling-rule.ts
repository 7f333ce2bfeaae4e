import type { LaidSyllable } from './laid-syllable.ts';

/**
 * A rule of position or spelling. `reads` says which cards it looks at: the
 * beginning with the vowel, the vowel with the ending, or all three; a rule
 * that reads one side gives the same answer whatever stands on the other.
 * `title` and `why` are a teacher's words; `exceptions` are real words that go
 * against the rule, the best known ones, in alphabetical order.
 */
export interface SpellingRule {
  readonly id: string;
  readonly title: string;
  readonly why: string;
  readonly source: string;
  readonly exceptions: readonly string[];
  readonly reads: 'beginning' | 'ending' | 'all';
  readonly breaks: (syllable: LaidSyllable) => boolean;
}

export const NATIONAL_CURRICULUM =
  'National Curriculum in England, English Appendix 1: Spelling (DfE 2013)';
export const ONSETS = 'Hayes & Wilson 2008, English onsets of the CMU dictionary';
export const CODAS = 'English codas as tabled by Yavaş, Applied English Phonology';
export const COMMON_PRACTICE = 'common practice, no published source';
