import type { JudgeContext } from '../boards/judge/judge-context.ts';
import type { CheckKind, MadeForm } from './check-form.ts';
import { makeLetterForm } from './letter-form.ts';
import { makeNonsenseForm } from './nonsense-form.ts';
import { makeSightForm } from './sight-form.ts';

/**
 * A form of a kind, of what was taught; the same seed gives the same form. Nonsense words in `read` are left
 * out where there are others.
 */
export function makeForm(
  kind: CheckKind,
  context: JudgeContext,
  seed: number,
  count: number,
  read: ReadonlySet<string> = new Set(),
): MadeForm {
  if (kind === 'letter-sounds') return makeLetterForm(context.taught, seed, count);
  if (kind === 'sight-words') return makeSightForm(context.taught, seed, count, context.lexicon);
  return makeNonsenseForm(context, seed, count, read);
}
