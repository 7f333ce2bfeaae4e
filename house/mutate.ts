import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import { fromRoot } from './root.mjs';
import { run } from './run.mjs';
import { giveUp } from './say.mjs';

/**
 * `npm run mutate core/texts` (or one file of it): changes the sources there in one place at a time and
 * names each change that no test beside them noticed. Takes minutes for a folder; see docs/testing.md.
 */
try {
  const [path, ...more] = process.argv.slice(2).map((given) => given.replace(/\/+$/, ''));
  if (!path?.startsWith('core/') || more.length > 0 || !existsSync(fromRoot(path)))
    throw new Error('Name one folder or file of the core, such as: npm run mutate core/texts');
  const isFile = path.endsWith('.ts');
  const sources = isFile ? path : `${path}/**/*.ts,!${path}/**/*.test.ts`;
  process.exitCode = await run(
    fromRoot('node_modules/.bin/stryker'),
    ['run', '--mutate', sources],
    { MUTATED: isFile ? dirname(path) : path },
  );
} catch (error) {
  giveUp(error);
}
