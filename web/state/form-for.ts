import type { CheckKind, MadeForm } from '../../core/checks/check-form.ts';
import { nextForm } from '../../core/checks/next-form.ts';
import { checksOf } from '../../core/log/check-record.ts';
import type { Child } from '../../core/log/class-state.ts';
import { taughtOf } from '../../core/sequence/progress.ts';
import { countWanted } from './check-choice.ts';
import type { Engine } from './engine.ts';
import { progressOfChild } from './everyone.ts';
import { classState } from './open-class.ts';
import { taught } from './progress.ts';

/** What is asked of a form. */
export interface FormWish {
  readonly kind: CheckKind;
  readonly timed: boolean;
}

/** The form that a child of the open class reads next, of what its own group was taught. */
export function formForChild(child: Child, wish: FormWish, engine: Engine): MadeForm {
  const own = checksOf(classState.value, child.id).map(({ form }) => form);
  return formOf(child.id, own, wish, { ...engine, taught: taughtOf(progressOfChild(child)) });
}

/** A form for whoever reads it, of what the group at work was taught; each `draw` gives another. */
export function formForAnyone(draw: number, wish: FormWish, engine: Engine): MadeForm {
  return formOf(`anyone ${draw}`, [], wish, { ...engine, taught: taught.value });
}

function formOf(
  child: string,
  own: Parameters<typeof nextForm>[0]['own'],
  { kind, timed }: FormWish,
  { taught, lexicon, screen }: Parameters<typeof nextForm>[1],
): MadeForm {
  const all = [...classState.value.checks.values()].map(({ form }) => form);
  const spec = { kind, count: countWanted(kind, timed), child, own, all };
  return nextForm(spec, { taught, lexicon, screen });
}
