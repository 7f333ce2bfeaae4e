import { computed } from '@preact/signals';
import {
  decideSounds,
  decideWord,
  NO_RULES,
  type TeacherDecision,
  type TeacherRules,
} from '../../core/words/teacher-rules.ts';
import { accent } from './accent.ts';
import { classState, recordUndoable } from './open-class.ts';

/** What she decided about words and sounds for her class. */
export const rules = computed<TeacherRules>(() => ({ decisions: classState.value.decisions }));

/**
 * The children's first names; they never leave this device unless she shares
 * them. Each word of a name is one, but for the letter that tells two children
 * of one name apart: Tam B is known as Tam.
 */
export const names = computed<readonly string[]>(() => {
  const words = [...classState.value.children.values()].flatMap(({ name, removed }) =>
    removed ? [] : name.split(/\s+/).filter((word) => /\p{L}.*\p{L}/u.test(word)),
  );
  return [...new Set(words)];
});

/** Equal while the same words are fit for the class; empty while nothing was decided. */
export const classWordsKey = computed(() => {
  const { decisions } = rules.value;
  if (decisions.length + names.value.length + accent.value.length === 0) return '';
  const decided = decisions.map(({ choice, about, text }) => `${choice} ${about} ${text}`);
  return [...accent.value, ...decided, ...names.value].join('\n');
});

/** Blocks or allows a word for her class; can be undone. */
export function settleWord(choice: TeacherDecision['choice'], word: string): void {
  settle(decideWord(NO_RULES, choice, word), said(choice, word));
}

/** Blocks or allows every spelling that sounds in one of these ways; can be undone. */
export function settleSounds(
  choice: TeacherDecision['choice'],
  word: string,
  ways: readonly Parameters<typeof decideSounds>[2][],
): void {
  const all = ways.reduce((sum, sounds) => decideSounds(sum, choice, sounds), NO_RULES);
  settle(all, said(choice, `${word}, however it is spelled,`));
}

/** Forgets all decisions about a word, or about sounds; can be undone. */
export function unsettle({ about, text }: Pick<TeacherDecision, 'about' | 'text'>): void {
  const undone = classState
    .peek()
    .decisions.filter((one) => one.about === about && one.text === text);
  recordUndoable(
    'Took back a decision.',
    ...undone.map(({ id }) => ({ kind: 'undone', body: { event: id } }) as const),
  );
}

function settle({ decisions }: TeacherRules, what: string): void {
  if (decisions.length === 0) return;
  recordUndoable(what, ...decisions.map((body) => ({ kind: 'decided', body }) as const));
}

function said(choice: TeacherDecision['choice'], word: string): string {
  return choice === 'block' ? `${word} stays hidden.` : `${word} may be shown.`;
}
