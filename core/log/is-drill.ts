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
  isObject,
  isOneOf,
  isOptional,
  isShape,
  isText,
} from './is-value.ts';

const isSounds = isListOf(isOneOf(PHONEMES));

const isKind = isOneOf(['real', 'nonsense']);
const isJoints = isOptional(isListOf(isNumber));

/** A class that is opened has thirty for each drill, so each field is named here: that is checked several times as fast. */
const isFlip: Check<Flip> = (value): value is Flip =>
  isObject(value) &&
  isCards(value.cards) &&
  isText(value.word) &&
  isSounds(value.sounds) &&
  isKind(value.kind) &&
  isJoints(value.joints);

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
