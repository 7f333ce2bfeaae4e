import { check, type InferOutput, maxValue, minValue, number, object, pipe } from 'valibot';
import { PUBLISHED_THRESHOLDS } from '../../core/learners/thresholds.ts';
import { remembered } from '../device/remembered.ts';

const share = pipe(number(), minValue(0), maxValue(1));

const schema = pipe(
  object({ secure: share, shaky: share }),
  check(({ secure, shaky }) => shaky <= secure),
);

/** Where the words ‘secure’ and ‘shaky’ begin for her, from 0 to 1; the published ones until she changes them. */
export const thresholds = remembered<InferOutput<typeof schema>>('thresholds', schema, {
  ...PUBLISHED_THRESHOLDS,
});
