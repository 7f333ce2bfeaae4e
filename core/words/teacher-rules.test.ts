import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Phoneme } from '../language/phonemes.ts';
import type { WordScreen } from './screen.ts';
import {
  decideSounds,
  decideWord,
  decisionsInForce,
  NO_RULES,
  screenForClass,
  type TeacherRules,
} from './teacher-rules.ts';

/** What holds for a word as these sounds, looked up one by one. */
function decisionFor({ decisions }: TeacherRules, word: string, sounds: readonly Phoneme[]) {
  const last = (about: string, text: string) =>
    decisions.findLast((one) => one.about === about && one.text === text);
  return last('word', word) ?? last('sounds', sounds.join(' '));
}

const ship: readonly Phoneme[] = ['SH', 'IH', 'P'];
const stopAll: WordScreen = {
  judge: () => ({ verdict: 'stop', category: 'insult', reason: 'sounds like an insult' }),
};
const clearAll: WordScreen = { judge: () => ({ verdict: 'clear', category: null, reason: null }) };

const decide = fc.oneof(
  fc.tuple(fc.constantFrom('block' as const, 'allow' as const), fc.constantFrom('ship', 'fat')).map(
    ([choice, word]) =>
      (rules: TeacherRules) =>
        decideWord(rules, choice, word),
  ),
  fc
    .constantFrom('block' as const, 'allow' as const)
    .map((choice) => (rules: TeacherRules) => decideSounds(rules, choice, ship)),
);

describe('a teacher’s decisions', () => {
  test('her word is the last, either way', () => {
    const allowed = screenForClass(stopAll, decideWord(NO_RULES, 'allow', 'Ship '), []);
    expect(allowed.judge('ship', ship).verdict).toBe('clear');
    const blocked = screenForClass(clearAll, decideSounds(NO_RULES, 'block', ship), []);
    expect(blocked.judge('shipp', ship)).toMatchObject({ verdict: 'stop', category: 'teacher' });
    expect(blocked.judge('shop', ['SH', 'AA', 'P']).verdict).toBe('clear');
  });

  test('the later decision about the same thing holds', () => {
    const rules = decideWord(decideWord(NO_RULES, 'block', 'fat'), 'allow', 'fat');
    expect(decisionFor(rules, 'fat', ['F', 'AE', 'T'])?.choice).toBe('allow');
  });

  test('a decision about the word goes before one about its sounds', () => {
    const rules = decideSounds(decideWord(NO_RULES, 'allow', 'ship'), 'block', ship);
    expect(screenForClass(clearAll, rules, []).judge('ship', ship).verdict).toBe('clear');
    expect(screenForClass(clearAll, rules, []).judge('shipp', ship).verdict).toBe('stop');
  });

  test('in force is the last decision about each thing', () => {
    const rules = decideWord(
      decideWord(decideWord(NO_RULES, 'block', 'fat'), 'block', 'ship'),
      'allow',
      'fat',
    );
    expect(decisionsInForce(rules).map(({ text, choice }) => [text, choice])).toEqual([
      ['fat', 'allow'],
      ['ship', 'block'],
    ]);
  });

  test('the screen goes by the last decision about the word, else by the last about its sounds', () => {
    fc.assert(
      fc.property(fc.array(decide), fc.constantFrom('ship', 'fat', 'sun'), (all, word) => {
        const rules = all.reduce((sum, one) => one(sum), NO_RULES);
        const choice = decisionFor(rules, word, ship)?.choice;
        const { category, verdict } = screenForClass(clearAll, rules, []).judge(word, ship);
        expect(category === 'teacher').toBe(choice !== undefined);
        expect(verdict).toBe(choice === 'block' ? 'stop' : 'clear');
      }),
    );
  });

  test('an empty word decides nothing', () => {
    expect(decideWord(NO_RULES, 'block', '  ')).toEqual(NO_RULES);
    expect(decideSounds(NO_RULES, 'block', [])).toEqual(NO_RULES);
  });
});

describe('children’s first names', () => {
  const names = [
    { name: 'Tam', sounds: null },
    { name: 'Fynn', sounds: ['F', 'IH', 'N'] as const },
  ];

  test('a name on the board is asked about, by spelling or by sound', () => {
    const screen = screenForClass(clearAll, NO_RULES, names);
    expect(screen.judge('tam', ['T', 'AE', 'M'])).toEqual({
      verdict: 'ask',
      category: 'name',
      reason: 'Tam is in this group',
    });
    expect(screen.judge('fin', ['F', 'IH', 'N']).reason).toBe('Fynn is in this group');
    expect(screen.judge('fan', ['F', 'AE', 'N']).verdict).toBe('clear');
  });

  test('a name is never stopped silently', () => {
    expect(screenForClass(stopAll, NO_RULES, names).judge('tam', []).verdict).toBe('ask');
  });

  test('a teacher may allow a name', () => {
    const screen = screenForClass(stopAll, decideWord(NO_RULES, 'allow', 'tam'), names);
    expect(screen.judge('tam', []).verdict).toBe('clear');
  });
});
