import {
  array,
  integer,
  literal,
  minValue,
  number,
  object,
  picklist,
  pipe,
  string,
  variant,
} from 'valibot';
import { HABITS } from '../../core/language/taught.ts';
import { GRADES } from '../../core/sequence/sequence.ts';

/** One thing that is taught, as it is remembered. */
export const itemSchema = variant('kind', [
  object({ kind: literal('card'), id: string() }),
  object({ kind: literal('habit'), habit: picklist(HABITS) }),
  object({ kind: literal('word'), word: string() }),
]);

/** A teacher's own order, as it is remembered. */
export const sequenceSchema = object({
  name: string(),
  steps: array(
    object({
      number: pipe(number(), integer(), minValue(1)),
      stage: string(),
      grade: picklist(GRADES),
      title: string(),
      items: array(itemSchema),
      why: string(),
    }),
  ),
});
