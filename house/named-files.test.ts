import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { expect, it } from 'vitest';
import { fromRoot } from './root.mjs';

const FOLDERS = 'bench|cli|core|docs|house|lexicon|ordering|print|server|test|web';
const ENDINGS = 'ts|tsx|mjs|css|md|tsv';
/** A path from the root, or the bare name of a file. */
const NAMED = new RegExp(
  `(?<![\\w./@-])((?:${FOLDERS})(?:/[\\w.{},-]+)+\\.(?:${ENDINGS})|[a-z][a-z0-9]*(?:-[a-z0-9]+)*(?:\\.test)?\\.(?:${ENDINGS}))(?![\\w/-])`,
  'g',
);

const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  cwd: fromRoot(),
  encoding: 'utf8',
})
  .trim()
  .split('\n')
  .filter((file) => existsSync(fromRoot(file)));
const names = new Set(files.map((file) => basename(file)));

/** The comments of a source file; of a page of prose all of it, but for its examples of commands. */
function prose(file: string, text: string): string {
  if (file.endsWith('.md')) return text.replace(/^```.*?^```/gms, '');
  return [...text.matchAll(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/.*$/gm)]
    .map(([comment]) => comment)
    .join('\n');
}

it('names in comments and pages of prose no file that is not there', () => {
  const missing: string[] = [];
  let seen = 0;
  for (const file of files) {
    if (!/\.(tsx?|mjs|css|md)$/.test(file)) continue;
    // What was so at the time of a decision or a release stays as it was written.
    if (/^(CHANGELOG\.md|docs\/decisions\/|NOTICE|test\/museum\/)/.test(file)) continue;
    for (const [, named = ''] of prose(file, readFileSync(fromRoot(file), 'utf8')).matchAll(
      NAMED,
    )) {
      seen++;
      const isThere = named.includes('/') ? existsSync(fromRoot(named)) : names.has(named);
      if (!isThere && !/[{}]/.test(named)) missing.push(`${file}: ${named}`);
    }
  }
  expect(seen).toBeGreaterThan(100);
  expect(missing).toEqual([]);
});
