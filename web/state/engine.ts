/** What the screens ask of the engine, and the word list behind it, fetched once. It holds only what was read. */

import { hiddenOnBoard } from '../../core/boards/judge/hidden-on-board.ts';
import { makeWordTable } from '../../core/boards/judge/word-table.ts';
import { countOutcomes, type OutcomeCounts } from '../../core/boards/search/best-board.ts';
import type { Board, Flip } from '../../core/boards/shapes/board.ts';
import { shapeById } from '../../core/boards/shapes/shape-list.ts';
import { soundsTaught } from '../../core/drills/auditory.ts';
import { buildDrill } from '../../core/drills/build-drill.ts';
import { commonnessIn } from '../../core/drills/commonness.ts';
import type { AuditorySound, Drill } from '../../core/drills/drill.ts';
import type { DrillSpec } from '../../core/drills/drill-spec.ts';
import { flipChoices } from '../../core/drills/edit-drill.ts';
import { mendRun } from '../../core/drills/mend-run.ts';
import { type OwnFlip, ownFlip } from '../../core/drills/own-flip.ts';
import { sightSaid } from '../../core/drills/sight.ts';
import { visualPool } from '../../core/drills/visual.ts';
import type { CardId } from '../../core/language/card-id.ts';
import { guessReading } from '../../core/language/guess.ts';
import type { Phoneme } from '../../core/language/phonemes.ts';
import type { Taught } from '../../core/language/taught.ts';
import { decodableWords } from '../../core/words/decodable.ts';
import type { Lexicon } from '../../core/words/lexicon.ts';
import { decodeLexicon } from '../../core/words/lexicon-format.ts';
import { decodeMeanings, type Meanings } from '../../core/words/meanings.ts';
import { soundedNames } from '../../core/words/name-sounds.ts';
import type { WordScreen } from '../../core/words/screen.ts';
import { SCREEN_DATA } from '../../core/words/screen-data.ts';
import type { HiddenWord } from '../../core/words/screen-report.ts';
import { screenForClass, type TeacherRules } from '../../core/words/teacher-rules.ts';
import { createWordScreen } from '../../core/words/word-screen.ts';
import meaningsUrl from '../../lexicon/dist/meanings.json?url';
import wordsUrl from '../../lexicon/dist/words.bin?url';

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
  /** A word of her own as a flip of a drill, or why it cannot be one. */
  ownFlip(word: string, drill: Drill, taught: Taught): OwnFlip;
  /** Every sound that can be asked for, with its taught spellings. */
  soundsFor(taught: Taught): readonly AuditorySound[];
  /** A word known by sight as something to say and have written. */
  sightSaid(id: CardId): AuditorySound;
  /** Every card that can be shown. */
  cardsFor(taught: Taught): readonly CardId[];
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
    ownFlip: (word, drill, taught) => ownFlip(word, drill, { taught, ...parts }),
    soundsFor: (taught) => soundsTaught(taught.correspondences, commonnessIn(lexicon)),
    sightSaid: (id) => sightSaid(id, lexicon),
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
  return (await import('../../core/dictation/sentences.ts')).SENTENCES;
}

async function fetchFile(url: string): Promise<Response> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  return response;
}
