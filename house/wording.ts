import { readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { fromRoot } from './root.mjs';

/**
 * `npm run wording`: everything that the screens say, screen by screen and in the order of their files, to be
 * read aloud together. A sentence with something of the class in it stands as it is written, with the name of
 * what goes there.
 */
type Saying = string | ((...parts: never[]) => unknown);

const screens = fromRoot('web/screens');
for (const screen of readdirSync(screens).sort()) {
  if (!readdirSync(`${screens}/${screen}`).includes('wording.ts')) continue;
  const { say } = (await import(pathToFileURL(`${screens}/${screen}/wording.ts`).href)) as {
    readonly say: Readonly<Record<string, Readonly<Record<string, Saying>>>>;
  };
  process.stdout.write(`\n# ${screen}\n`);
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
