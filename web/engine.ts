/**
 * The one seam between the screens and the engine: what the screens may use of
 * the core, and the word list, loaded once. The core keeps no state; the loaded
 * engine holds only what was read.
 */

import { countOutcomes, type OutcomeCounts } from '../core/boards/best-board.ts';
import type { Board, Flip } from '../core/boards/board.ts';
import { hiddenOnBoard } from '../core/boards/hidden-on-board.ts';
import { shapeById } from '../core/boards/shape-list.ts';
import { makeWordTable } from '../core/boards/word-table.ts';
import { soundsTaught } from '../core/drills/auditory.ts';
import { buildDrill } from '../core/drills/build-drill.ts';
import { commonnessIn } from '../core/drills/commonness.ts';
import type { AuditorySound, Drill } from '../core/drills/drill.ts';
import type { DrillSpec } from '../core/drills/drill-spec.ts';
import { flipChoices } from '../core/drills/edit-drill.ts';
import { mendRun } from '../core/drills/mend-run.ts';
import { visualPool } from '../core/drills/visual.ts';
import { guessReading } from '../core/language/guess.ts';
import type { Phoneme } from '../core/language/phonemes.ts';
import type { Taught } from '../core/language/taught.ts';
import { decodableWords } from '../core/words/decodable.ts';
import type { Lexicon } from '../core/words/lexicon.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { decodeMeanings, type Meanings } from '../core/words/meanings.ts';
import { soundedNames } from '../core/words/name-sounds.ts';
import type { WordScreen } from '../core/words/screen.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import type { HiddenWord } from '../core/words/screen-report.ts';
import { screenForClass, type TeacherRules } from '../core/words/teacher-rules.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import meaningsUrl from '../lexicon/dist/meanings.json?url';
import wordsUrl from '../lexicon/dist/words.bin?url';

export type { Board, Flip } from '../core/boards/board.ts';
export { makeBoardLink } from '../core/boards/board-link.ts';
export { type Piece, pieceKey, piecesOf } from '../core/boards/pieces.ts';
export {
  CARD_HEIGHT,
  layOut,
  type RowLayout,
  type Space,
  sweptTo,
} from '../core/boards/row-layout.ts';
export { ROW_RULES } from '../core/checks/score-check.ts';
export { contrastChoices } from '../core/drills/contrasts.ts';
export {
  type Dictation,
  type DictationSources,
  dictationFor,
  fitDictation,
  newestItems,
} from '../core/drills/dictation.ts';
export type { AuditorySound, Drill } from '../core/drills/drill.ts';
export type { PartWishes } from '../core/drills/drill-spec.ts';
export { dropFlip } from '../core/drills/edit-drill.ts';
export { type CardShape, cardShape } from '../core/language/card-shape.ts';
export { type Correspondence, PLACES } from '../core/language/correspondence.ts';
export { correspondenceById, correspondencesByGrapheme } from '../core/language/correspondences.ts';
export {
  type LikelySlip,
  likelySlips,
  WORD_SLIPS,
} from '../core/language/likely-slips.ts';
export {
  isVowelPhoneme,
  PHONEMES,
  type Phoneme,
  soundLabel,
} from '../core/language/phonemes.ts';
export type { CardReading, Reading, Syllable, SyllableType } from '../core/language/reading.ts';
export { HABITS, type Habit, isHabit, type Taught } from '../core/language/taught.ts';
export { type Day, parseDay } from '../core/learners/day.ts';
export { observationsOf } from '../core/learners/evidence-from-log.ts';
export { knowledgeFrom } from '../core/learners/knowledge.ts';
export { PUBLISHED_THRESHOLDS } from '../core/learners/mastery-word.ts';
export { planReview, type ReviewChoice } from '../core/learners/review.ts';
export { makeReason } from '../core/learners/review-reason.ts';
export {
  type AfterDrill,
  afterDrill,
  type BringBack,
  type BrokenCard,
  brokenByCard,
  type MarkInPlace,
  markedCards,
  toBringBack,
} from '../core/log/after-drill.ts';
export { eventsIn } from '../core/log/class-events.ts';
export {
  type Child,
  type ClassState,
  type DrillRecord,
  type Group,
  type Mark,
  WHOLE_CLASS,
} from '../core/log/class-state.ts';
export { planAt } from '../core/log/drill-record.ts';
export {
  type Amendment,
  type EventSpec,
  type LogEvent,
  type Part,
  SLIPS,
  type Slip,
} from '../core/log/event.ts';
export { type ClassHead, isOfHead, type StoreError } from '../core/log/event-store.ts';
export type { Evidence } from '../core/log/evidence.ts';
export type { DamagedLine } from '../core/log/log-file.ts';
export { mergeEvents } from '../core/log/merge.ts';
export { nextChildren } from '../core/log/next-child.ts';
export { drillsOf, recentWords } from '../core/log/recent.ts';
export { replay } from '../core/log/replay.ts';
export { childrenOf, smallGroups } from '../core/log/roster.ts';
export { groupBegun, groupOf, groupRemoved, sharedNames } from '../core/log/roster-changes.ts';
export { makeStanding, progressOf } from '../core/log/standing.ts';
export { makeRandom } from '../core/random.ts';
export { SEQUENCE } from '../core/sequence/built-in.ts';
export { itemKey } from '../core/sequence/item.ts';
export {
  addItem,
  dropItem,
  moveStepOf,
  type Progress,
  setStep,
  taughtOf,
} from '../core/sequence/progress.ts';
export { GRADES, type Item, type Sequence, type Step } from '../core/sequence/sequence.ts';
export {
  type CsvProblem,
  makeSequenceCsv,
  parseSequenceCsv,
} from '../core/sequence/sequence-csv.ts';
export { stepOf } from '../core/sequence/step-of.ts';
export {
  type JudgedWord,
  judgePassage,
  type Passage,
  stepForShare,
} from '../core/texts/passage.ts';
export type { Token } from '../core/texts/tokens.ts';
export { findWords, minimalPairs } from '../core/words/finder.ts';
export { hardness } from '../core/words/hardness.ts';
export { parseNames } from '../core/words/name-sounds.ts';
export type { Screened, ScreenVerdict } from '../core/words/screen.ts';
export type { HiddenWord } from '../core/words/screen-report.ts';
export {
  decideSounds,
  decideWord,
  decisionsInForce,
  NO_RULES,
  type TeacherDecision,
  type TeacherRules,
} from '../core/words/teacher-rules.ts';
export type { Lexicon, Meanings, OutcomeCounts, WordScreen };

/** What the screens ask of the engine once the word list is here. */
export interface Engine {
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
  /** How many words of the list can be read. */
  countReadable(taught: Taught): number;
  /** A new drill; the same spec gives the same drill. */
  build(spec: DrillSpec): Drill;
  /** How all combinations of a board count; null for a board without cards. */
  survey(board: Board, taught: Taught): OutcomeCounts | null;
  /** The words that can take the place of a flip. */
  flipChoices(drill: Drill, place: number, taught: Taught): readonly Flip[];
  /** Every sound that can be asked for, with its taught spellings. */
  soundsFor(taught: Taught): readonly AuditorySound[];
  /** Every card that can be shown. */
  cardsFor(taught: Taught): readonly string[];
  /** The words of a board that the screen keeps from the class, and why. */
  hidden(board: Board, taught: Taught): readonly HiddenWord[];
  /** A drill without the flips that the screen clears no longer. */
  mend(drill: Drill, taught: Taught): Drill;
  /** The ways a spelling can be said: as the word list has it, else as its letters suggest. */
  waysToSay(word: string): readonly (readonly Phoneme[])[];
  /** The same engine for a class: with its teacher's decisions and its children's first names. */
  forClass(rules: TeacherRules, names: readonly string[]): Engine;
}

/** Fetches the word list and makes the engine. Rejects when the list cannot be had. */
export async function loadEngine(): Promise<Engine> {
  const lexicon = decodeLexicon(new Uint8Array(await (await fetchFile(wordsUrl)).arrayBuffer()));
  return makeEngine(lexicon, createWordScreen(SCREEN_DATA));
}

function makeEngine(lexicon: Lexicon, screen: WordScreen): Engine {
  const parts = { lexicon, screen };
  return {
    ...parts,
    countReadable: (taught) => decodableWords(lexicon, taught).length,
    build: (spec) => buildDrill(spec, parts),
    survey(board, taught) {
      const shape = shapeById.get(board.shape);
      if (!shape || board.piles.some((pile) => pile.length === 0)) return null;
      return countOutcomes(makeWordTable(shape, board.piles, { taught, ...parts }));
    },
    flipChoices: (drill, place, taught) => flipChoices(drill, place, taught, parts),
    soundsFor: (taught) => soundsTaught(taught.correspondences, commonnessIn(lexicon)),
    cardsFor: (taught) => visualPool(taught.correspondences),
    hidden: (board, taught) => hiddenOnBoard(board, { taught, ...parts }),
    mend: (drill, taught) => mendRun(drill, taught, parts),
    waysToSay(word) {
      const index = lexicon.indexOf(word);
      if (index >= 0) return lexicon.readings(index).map(({ sounds }) => sounds);
      const guess = guessReading(word);
      return guess ? [guess.sounds] : [];
    },
    forClass: (rules, names) =>
      rules.decisions.length + names.length === 0
        ? makeEngine(lexicon, screen)
        : makeEngine(lexicon, screenForClass(screen, rules, soundedNames(names, lexicon))),
  };
}

/** Fetches the short meanings. Rejects when they cannot be had; all else goes on without them. */
export async function loadMeanings(): Promise<Meanings> {
  return decodeMeanings(await (await fetchFile(meaningsUrl)).json());
}

/** The sentences of the dictation, fetched when they are first asked for. Rejects when they cannot be had. */
export async function loadSentences(): Promise<readonly string[]> {
  return (await import('../core/drills/sentences.ts')).SENTENCES;
}

async function fetchFile(url: string): Promise<Response> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  return response;
}
