import { existsSync } from 'node:fs';
import { fromRoot } from './root.mjs';
import { run } from './run.mjs';
import { giveUp } from './say.mjs';

/**
 * `npm run mutate core/texts` (or one file of it): changes the sources there in one place at a time and
 * names each change that no test of their room noticed. Takes minutes for a folder; see docs/testing.md.
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
    { MUTATED: roomOf(path) },
  );
} catch (error) {
  giveUp(error);
}

/** The room of the core that a path lies in: `core/learners` for `core/learners/belief/answer.ts`. */
function roomOf(path: string): string {
  const folders = path.split('/').filter((name) => !name.endsWith('.ts'));
  return folders.slice(0, folders[1] === 'boards' ? 3 : 2).join('/');
}
