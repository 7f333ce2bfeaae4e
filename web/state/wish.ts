import {
  boolean,
  custom,
  type InferOutput,
  integer,
  maxValue,
  minValue,
  number,
  object,
  optional,
  picklist,
  pipe,
  string,
} from 'valibot';
import type { CardId } from '../../core/language/card-id.ts';
import { PLACES } from '../../core/language/correspondence.ts';
import { isCard } from '../../core/log/is-card.ts';
import { remembered } from '../device/remembered.ts';

/** Where in a word a card may be asked for. */
export const PLACES_ASKED = ['anywhere', ...PLACES] as const;

/** In which order words are shown: by how common, by how easy, by their letters. */
export const ORDERS = ['common', 'easy', 'letters'] as const;

const cardOrNone = custom<CardId | ''>((value) => value === '' || isCard(value));

const schema = object({
  onlyTaught: boolean(),
  irregular: boolean(),
  /** Whether words that are the teacher's to decide come too. */
  asked: boolean(),
  /** A shape such as `cvc`; empty for any. */
  shape: string(),
  /** 0 for any number. */
  syllables: pipe(number(), integer(), minValue(0), maxValue(12)),
  /** A card's id; empty for any. */
  card: cardOrNone,
  place: picklist(PLACES_ASKED),
  /** The two cards of a contrast; empty until chosen. */
  left: cardOrNone,
  right: cardOrNone,
  order: picklist(ORDERS),
  /** Letters that stand side by side in the word; empty for any. */
  letters: optional(string(), ''),
});

/** What she looks for. */
export type WordWish = InferOutput<typeof schema>;

/** Nothing narrowed but to what her class was taught. */
export const ANY_WORD: WordWish = {
  onlyTaught: true,
  irregular: false,
  asked: false,
  shape: '',
  syllables: 0,
  card: '',
  place: 'anywhere',
  left: '',
  right: '',
  order: 'common',
  letters: '',
};

/** What she looked for last, remembered on this device. */
export const wish = remembered<WordWish>('words', schema, ANY_WORD);

/** Changes some of it. */
export function setWish(some: Partial<WordWish>): void {
  wish.value = { ...wish.peek(), ...some };
}
