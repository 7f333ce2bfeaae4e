import { ensureMade } from './made.mjs';
import { run } from './run.mjs';
import { say } from './say.mjs';

/** Makes sure that `dist/` holds the app built from the sources as they stand, ready to be served. */
export function ensureApp() {
  return ensureMade({
    from: [
      'web',
      'core',
      'print',
      'lexicon/dist/made-from.txt',
      'house',
      'vite.config.ts',
      'package-lock.json',
      'CHANGELOG.md',
      'LICENSE',
      'NOTICE',
    ],
    files: ['dist/index.html', 'dist/sw.js'],
    stamp: 'dist/made-from.txt',
    make: async () => {
      say('Building the app …');
      const code =
        (await run(process.execPath, [
          'node_modules/vite/bin/vite.js',
          'build',
          '--logLevel=warn',
        ])) || (await run(process.execPath, ['--import', 'tsx', 'house/compress.ts']));
      if (code !== 0) throw new Error(`The app could not be built (exit ${code}); see above.`);
    },
  });
}
