import { CHECK_KINDS, type CheckForm, type CheckItem } from '../checks/check-form.ts';
import { PHONEMES } from '../language/phonemes.ts';
import { isCards } from './is-card.ts';
import { type Check, isListOf, isNumber, isOneOf, isShape, isText } from './is-value.ts';

const isItem = isShape<CheckItem>({
  text: isText,
  cards: isCards,
  answers: isListOf(isListOf(isOneOf(PHONEMES))),
});

/** Whether a value read from a log is the form of a short check. */
export const isForm: Check<CheckForm> = isShape<CheckForm>({
  kind: isOneOf(CHECK_KINDS),
  seed: isNumber,
  items: isListOf(isItem),
  hardness: isNumber,
  offBy: isNumber,
});
