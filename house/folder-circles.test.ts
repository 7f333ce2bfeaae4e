import { describe, expect, it } from 'vitest';
import { folderCircles } from './folder-circles.ts';

describe('folderCircles', () => {
  it('finds none in floors, whatever the files of one folder do', () => {
    expect(
      folderCircles([
        ['shell/app.ts', 'screens/today/today.ts'],
        ['screens/today/today.ts', 'screens/today/flips.ts'],
        ['screens/today/today.ts', 'state/plan.ts'],
        ['shell/app.ts', 'state/plan.ts'],
      ]),
    ).toEqual([]);
  });

  it('finds two folders that need each other through different files', () => {
    expect(
      folderCircles([
        ['words/find.ts', 'sheets/make.ts'],
        ['sheets/file.ts', 'words/title.ts'],
        ['main.ts', 'words/find.ts'],
      ]),
    ).toEqual([['sheets', 'words']]);
  });

  it('finds a circle of three, and another apart from it', () => {
    expect(
      folderCircles([
        ['a/1.ts', 'b/1.ts'],
        ['b/2.ts', 'c/1.ts'],
        ['c/2.ts', 'a/2.ts'],
        ['c/2.ts', 'd/1.ts'],
        ['d/1.ts', 'e/1.ts'],
        ['e/2.ts', 'd/2.ts'],
      ]),
    ).toEqual([
      ['d', 'e'],
      ['a', 'b', 'c'],
    ]);
  });
});
