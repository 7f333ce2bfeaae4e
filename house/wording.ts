import { readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { fromRoot } from './root.mjs';

/**
 * `npm run wording`: everything that the app says: around its screens, on its controls, then screen by screen and in the order of their files, to be
 * read aloud together. A sentence with something of the class in it stands as it is written, with the name of
 * what goes there.
 */
type Saying = string | ((...parts: never[]) => unknown);

const screens = readdirSync(fromRoot('web/screens')).sort();
for (const room of ['shell', 'controls', ...screens.map((screen) => `screens/${screen}`)]) {
  const folder = fromRoot(`web/${room}`);
  if (!readdirSync(folder).includes('wording.ts')) continue;
  const { say } = (await import(pathToFileURL(`${folder}/wording.ts`).href)) as {
    readonly say: Readonly<Record<string, Readonly<Record<string, Saying>>>>;
  };
  process.stdout.write(`\n# ${room}\n`);
  for (const [file, sayings] of Object.entries(say)) {
    process.stdout.write(`\n## ${file}\n\n`);
    for (const saying of Object.values(sayings)) process.stdout.write(`- ${written(saying)}\n`);
  }
}

/** A function as the sentence that it makes: its template, or the code of one that chooses among several. */
function written(saying: Saying): string {
  if (typeof saying === 'string') return saying;
  const body = String(saying)
    .replace(/^[^=]*=>\s*/, '')
    .replace(/\s+/g, ' ');
  return /^(?:sentence)?`([^`]*)`$/.exec(body)?.[1] ?? body;
}
