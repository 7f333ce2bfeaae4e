import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fromRoot } from './root.mjs';

it('the glossary names each type where it is declared', () => {
  const rows = readFileSync(fromRoot('docs/glossary.md'), 'utf8').matchAll(
    /^\| [^|]+\| [^|]+\| ([^|]*)\| `([^`]+)` +\|$/gm,
  );
  const missing: string[] = [];
  let seen = 0;
  for (const [, types = '', file = ''] of rows) {
    const source = readFileSync(fromRoot(file), 'utf8');
    for (const [, name] of types.matchAll(/`([A-Za-z]+)/g)) {
      seen++;
      const declared = new RegExp(`export (?:async )?(?:interface|type|function|const) ${name}\\b`);
      if (!declared.test(source)) missing.push(`${name}: ${file}`);
    }
  }
  expect(seen).toBeGreaterThan(35);
  expect(missing).toEqual([]);
});

it('one exported name is one type: none is declared in two modules', () => {
  const where = new Map<string, string[]>();
  for (const file of sources()) {
    const text = readFileSync(fromRoot(file), 'utf8');
    for (const [, name = ''] of text.matchAll(/^export (?:type|interface|class) (\w+)/gm))
      where.set(name, [...(where.get(name) ?? []), file]);
  }
  expect(where.size).toBeGreaterThan(400);
  expect([...where].filter(([, files]) => files.length > 1)).toEqual([]);
});

/** What is shipped; of ordering/ not the program, whose text is the head of the file that it writes. */
function sources(): readonly string[] {
  const listed = execFileSync(
    'git',
    ['ls-files', 'core', 'lexicon', 'ordering', 'print', 'web', 'cli', 'server', 'house'],
    { cwd: fromRoot(), encoding: 'utf8' },
  );
  return listed
    .split('\n')
    .filter((file) => /\.tsx?$/.test(file) && !/\.test\.tsx?$/.test(file))
    .filter((file) => file !== 'ordering/main.ts' && existsSync(fromRoot(file)));
}
