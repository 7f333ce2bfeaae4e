import { ensureApp } from './app.mjs';
import { ensureChromium } from './chromium.mjs';
import { ensureLexicon } from './lexicon.mjs';
import { ensureModules } from './modules.mjs';
import { giveUp } from './say.mjs';

/**
 * `node house/ensure.mjs modules lexicon …` sees to each thing named, in that order. Uses only what
 * Node brings along, since it must run before anything is installed.
 */
const things = {
  modules: ensureModules,
  chromium: ensureChromium,
  lexicon: ensureLexicon,
  app: ensureApp,
};

try {
  for (const name of process.argv.slice(2)) {
    const ensure = Object.entries(things).find(([thing]) => thing === name)?.[1];
    if (!ensure)
      throw new Error(`Nothing is called “${name}”. Try: ${Object.keys(things).join(', ')}.`);
    await ensure();
  }
} catch (error) {
  giveUp(error);
}
