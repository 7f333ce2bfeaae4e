import type { Phoneme } from '../phonemes.ts';

/**
 * A sound as it is said in some class. ARPABET has no signs for these: `OH` the vowel of *hot* where it is
 * not that of *father*; `EA`, `IA`, `UA` the vowels of *chair*, *ear*, *cure* where no r follows them; `HW`
 * the wh of those who keep it apart from w. With southern British, `AA` is the vowel of *star*, `AO` that
 * of *fork* and `ER` that of *bird*, all without r.
 */
export type HereSound = Phoneme | 'OH' | 'EA' | 'IA' | 'UA' | 'HW';
