import type { Phoneme } from '../language/phonemes.ts';
import type { Screened, WordScreen } from './screen.ts';
import { growSoundTree } from './sound-tree.ts';

/**
 * What a teacher has decided for her class: words and sounds that she blocks or
 * allows, oldest first. The last decision about the same word or the same
 * sounds holds; a decision about the word goes before one about its sounds.
 */
export interface TeacherRules {
  readonly decisions: readonly TeacherDecision[];
}

/** One decision. `text` is a spelling in lower case, or sounds as ARPABET joined by spaces. */
export interface TeacherDecision {
  readonly choice: 'block' | 'allow';
  readonly about: 'word' | 'sounds';
  readonly text: string;
}

/** A child of the group, and how the name is said if that is known. */
export interface FirstName {
  readonly name: string;
  readonly sounds: readonly Phoneme[] | null;
}

/** Nothing decided. */
export const NO_RULES: TeacherRules = { decisions: [] };

/** The rules with a word blocked or allowed. */
export function decideWord(
  rules: TeacherRules,
  choice: TeacherDecision['choice'],
  word: string,
): TeacherRules {
  return decided(rules, { choice, about: 'word', text: word.trim().toLowerCase() });
}

/** The rules with a way of sounding blocked or allowed, however it is spelled. */
export function decideSounds(
  rules: TeacherRules,
  choice: TeacherDecision['choice'],
  sounds: readonly Phoneme[],
): TeacherRules {
  return decided(rules, { choice, about: 'sounds', text: sounds.join(' ') });
}

/** What holds now: the last decision about each word and each way of sounding, the latest first. */
export function decisionsInForce({ decisions }: TeacherRules): readonly TeacherDecision[] {
  const held = new Map<string, TeacherDecision>();
  for (const decision of [...decisions].reverse()) {
    const key = `${decision.about}:${decision.text}`;
    if (!held.has(key)) held.set(key, decision);
  }
  return [...held.values()];
}

/**
 * A screen that knows the teacher's rules and the children of the group. Her
 * word is the last: it overrules the screen and the names either way. A
 * child's first name, spelled so or said so, is asked about and never stopped
 * silently, whatever else it may be.
 */
export function screenForClass(
  screen: WordScreen,
  rules: TeacherRules,
  names: readonly FirstName[],
): WordScreen {
  const about = (kind: TeacherDecision['about']) =>
    rules.decisions.filter((decision) => decision.about === kind);
  const byWord = new Map(about('word').map(({ text, choice }) => [text, choice]));
  const bySounds = growSoundTree(
    about('sounds').map(({ text, choice }) => [text.split(' '), choice] as const),
  );
  const namesBySpelling = new Map(
    names.map(({ name }) => [name.trim().toLowerCase(), name.trim()]),
  );
  const namesBySounds = growSoundTree(
    names.flatMap(({ name, sounds }) => (sounds ? [[sounds, name.trim()] as const] : [])),
  );
  return {
    judge(word, sounds) {
      const spelling = word.toLowerCase();
      const choice = byWord.get(spelling) ?? bySounds.get(sounds);
      if (choice) return choice === 'block' ? BLOCKED : ALLOWED;
      const name = namesBySpelling.get(spelling) ?? namesBySounds.get(sounds);
      if (name !== undefined) return nameFound(name);
      return screen.judge(word, sounds);
    },
  };
}

const BLOCKED: Screened = { verdict: 'stop', category: 'teacher', reason: 'you blocked it' };
const ALLOWED: Screened = { verdict: 'clear', category: 'teacher', reason: 'you allowed it' };

function nameFound(name: string): Screened {
  return { verdict: 'ask', category: 'name', reason: `${name} is in this group` };
}

function decided(rules: TeacherRules, decision: TeacherDecision): TeacherRules {
  return decision.text === '' ? rules : { decisions: [...rules.decisions, decision] };
}
