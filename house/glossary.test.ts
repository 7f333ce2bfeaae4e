import { readFileSync } from 'node:fs';
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
