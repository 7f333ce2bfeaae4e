import type { RunScore } from '../boards/runs/score.ts';
import type { Board, Flip } from '../boards/shapes/board.ts';
import type { AuditorySound, Drill, Shortfall } from '../drills/drill.ts';
import { PHONEMES } from '../language/phonemes.ts';
import { isCards } from './is-card.ts';
import {
  type Check,
  isListOf,
  isNullOr,
  isNumber,
  isOneOf,
  isOptional,
  isShape,
  isText,
} from './is-value.ts';

const isSounds = isListOf(isOneOf(PHONEMES));

const isFlip = isShape<Flip>({
  cards: isCards,
  word: isText,
  sounds: isSounds,
  kind: isOneOf(['real', 'nonsense']),
  joints: isOptional(isListOf(isNumber)),
});

const isSound = isShape<AuditorySound>({ phonemes: isSounds, spellings: isCards });

/** Whether a value read from a log or a device is a board. */
export const isBoard: Check<Board> = isShape<Board>({ shape: isText, piles: isListOf(isCards) });

const isScore = isShape<RunScore>({ reached: isNumber, floor: isNumber, bound: isNumber });

const shortfalls = {
  'nothing-taught': true,
  'no-vowel': true,
  'few-letters': true,
  'few-words': true,
} satisfies Record<Shortfall['code'], true>;

const isShortfall = isShape<Shortfall>({
  code: isOneOf(Object.keys(shortfalls) as Shortfall['code'][]),
  message: isText,
});

/** Whether a value read from a log or a device is a drill. */
export const isDrill: Check<Drill> = isShape<Drill>({
  seed: isNumber,
  visual: isCards,
  auditory: isListOf(isSound),
  board: isBoard,
  run: isListOf(isFlip),
  shortfall: isNullOr(isShortfall),
  score: isOptional(isScore),
});
