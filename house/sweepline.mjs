import { ensureLexicon } from './lexicon.mjs';
import { ensureModules } from './modules.mjs';
import { fromRoot } from './root.mjs';
import { giveUp } from './say.mjs';

/**
 * Runs the terminal program in this very process, so that a short command costs one start of Node.
 * Paths that a person types count from the folder where she typed them, not from the project's.
 */
try {
  await ensureModules();
  await ensureLexicon();
} catch (error) {
  giveUp(error);
}
try {
  process.chdir(process.env.INIT_CWD ?? process.cwd());
} catch {
  giveUp(new Error('The folder this was started in is gone. Go to another and try again.'));
}
process.argv[1] = fromRoot('cli/main.ts');
const { register } = await import('tsx/esm/api');
register();
await import('../cli/main.ts');
