import { HABITS } from '../language/taught.ts';
import { GRADES, type Item, type Sequence, type Step } from '../sequence/sequence.ts';
import type { GroupPlace } from './group-place.ts';
import { isCard } from './is-card.ts';
import {
  type Check,
  isEither,
  isListOf,
  isNullOr,
  isOneOf,
  isOptional,
  isShape,
  isText,
  isWhole,
} from './is-value.ts';

/** Whether a value read from a log or a device is a thing to teach. */
export const isItem: Check<Item> = isEither(
  isShape({ kind: isOneOf(['card']), id: isCard }),
  isEither(
    isShape({ kind: isOneOf(['word']), word: isText }),
    isShape({ kind: isOneOf(['habit']), habit: isOneOf(HABITS) }),
  ),
);

const isStep = isShape<Step>({
  number: isWhole(1),
  stage: isText,
  grade: isOneOf(GRADES),
  title: isText,
  items: isListOf(isItem),
  why: isText,
});

/** Whether a value read from a log or a device is an order. */
export const isSequence: Check<Sequence> = isShape<Sequence>({
  name: isText,
  steps: isListOf(isStep),
});

/** Whether a value read from a log is a group's place in an order. */
export const isGroupPlace: Check<GroupPlace> = isShape<GroupPlace>({
  own: isNullOr(isSequence),
  edition: isOptional(isWhole(1)),
  upTo: isWhole(0),
  at: isListOf(isText),
  added: isListOf(isItem),
  dropped: isListOf(isItem),
});
