import { computed } from '@preact/signals';
import { array, object, picklist, string } from 'valibot';
import {
  decideSounds,
  decideWord,
  forgetDecision,
  type TeacherDecision,
  type TeacherRules,
} from '../engine.ts';
import { remembered } from './remembered.ts';
import { change } from './undo.ts';

const schema = object({
  decisions: array(
    object({
      choice: picklist(['block', 'allow']),
      about: picklist(['word', 'sounds']),
      text: string(),
    }),
  ),
  names: array(string()),
});

const kept = remembered('class-words', schema, { decisions: [], names: [] });

/** What she decided about words and sounds for her class. */
export const rules = computed<TeacherRules>(() => ({ decisions: kept.value.decisions }));

/** The children's first names; they never leave this device. */
export const names = computed<readonly string[]>(() => kept.value.names);

/** Equal while the same words are fit for the class; empty while nothing was decided. */
export const classWordsKey = computed(() => {
  const { decisions, names } = kept.value;
  return decisions.length + names.length === 0 ? '' : JSON.stringify(kept.value);
});

/** Blocks or allows a word for her class; can be undone. */
export function settleWord(choice: TeacherDecision['choice'], word: string): void {
  put(decideWord(rules.peek(), choice, word), said(choice, word));
}

/** Blocks or allows every spelling that sounds like this; can be undone. */
export function settleSounds(
  choice: TeacherDecision['choice'],
  word: string,
  sounds: Parameters<typeof decideSounds>[2],
): void {
  put(decideSounds(rules.peek(), choice, sounds), said(choice, `${word}, however it is spelled,`));
}

/** Forgets a decision; can be undone. */
export function unsettle(decision: TeacherDecision): void {
  put(forgetDecision(rules.peek(), decision), 'Took back a decision.');
}

/** Remembers the children's first names; called as she types, so the field's own undo is the undo. */
export function setNames(next: readonly string[]): void {
  kept.value = { decisions: kept.peek().decisions, names: [...next] };
}

function put({ decisions }: TeacherRules, what: string): void {
  change(kept, { decisions: [...decisions], names: kept.peek().names }, what);
}

function said(choice: TeacherDecision['choice'], word: string): string {
  return choice === 'block' ? `${word} stays hidden.` : `${word} may be shown.`;
}
