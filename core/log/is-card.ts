import { type CardId, isCardId } from '../language/card-id.ts';
import { type Check, isListOf } from './is-value.ts';

/** Whether a value read from a log or a device is the name of a card. */
export const isCard: Check<CardId> = (value): value is CardId =>
  typeof value === 'string' && isCardId(value);

/** Whether it is a list of cards. */
export const isCards: Check<readonly CardId[]> = isListOf(isCard);
