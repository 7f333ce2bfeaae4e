import { AFAR_SENTENCES } from './sentences/afar.ts';
import { DIGRAPH_SENTENCES } from './sentences/digraphs.ts';
import { LATER_R_SENTENCES } from './sentences/later-r.ts';
import { LATIN_SENTENCES } from './sentences/latin.ts';
import { LETTER_SENTENCES } from './sentences/letters.ts';
import { MORE_TEAM_SENTENCES } from './sentences/more-teams.ts';
import { OPEN_SENTENCES } from './sentences/open.ts';
import { R_VOWEL_SENTENCES } from './sentences/r-vowels.ts';
import { RARE_SENTENCES } from './sentences/rare.ts';
import { SILENT_E_SENTENCES } from './sentences/silent-e.ts';
import { TEAM_SENTENCES } from './sentences/teams.ts';
import { TWO_BEAT_SENTENCES } from './sentences/two-beats.ts';

/**
 * The sentences of the dictation, easiest stage first; a sentence's exact step
 * is computed (test/sentence-step.ts). All were written for this project.
 */
export const SENTENCES: readonly string[] = [
  LETTER_SENTENCES,
  DIGRAPH_SENTENCES,
  SILENT_E_SENTENCES,
  TEAM_SENTENCES,
  TWO_BEAT_SENTENCES,
  R_VOWEL_SENTENCES,
  OPEN_SENTENCES,
  MORE_TEAM_SENTENCES,
  LATER_R_SENTENCES,
  LATIN_SENTENCES,
  RARE_SENTENCES,
  AFAR_SENTENCES,
].flatMap(sentencesIn);

/** One sentence a line; empty lines and titles, which begin with #, are left out. */
function sentencesIn(text: string): readonly string[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('#'));
}
