import { describe, expect, it } from 'vitest';
import { undoLast } from '../undo.ts';
import { choices, choose } from './print-choices.ts';
import { applySet, keepSet, printSets, removeSet, renameSet } from './print-sets.ts';

const names = () => printSets.value.map(({ name }) => name);

describe('sets of choices', () => {
  it('are kept, chosen again, renamed and removed, and each of it can be undone', () => {
    const before = choices.peek();
    choose({ kind: 'desk', source: 'newest', paper: 'a4', pictures: true });
    const friday = choices.peek();
    keepSet(' My Friday cards ');
    choose({ kind: 'home', paper: 'letter' });
    keepSet('Home');
    expect(names()).toEqual(['My Friday cards', 'Home']);

    const [first] = printSets.value;
    if (first) applySet(first);
    expect(choices.peek()).toEqual(friday);
    undoLast();
    expect(choices.peek().kind).toBe('home');

    renameSet('My Friday cards', 'Friday');
    expect(names()).toEqual(['Friday', 'Home']);
    removeSet('Friday');
    expect(names()).toEqual(['Home']);
    undoLast();
    expect(printSets.value[0]).toEqual({ name: 'Friday', choices: friday });
    undoLast();
    expect(names()).toEqual(['My Friday cards', 'Home']);
    choices.value = before;
  });

  it('of one name make way for each other', () => {
    const count = names().length;
    keepSet('Twice');
    choose({ blank: 3 });
    keepSet('Twice');
    expect(names()).toHaveLength(count + 1);
    expect(printSets.value.at(-1)?.choices.blank).toBe(3);
    keepSet('Once');
    renameSet('Once', 'Twice');
    expect(names().filter((name) => name === 'Twice')).toHaveLength(1);
    removeSet('Twice');
    choose({ blank: 0 });
  });
});
