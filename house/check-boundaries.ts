import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import extractTsConfig from 'dependency-cruiser/config-utl/extract-ts-config';
import configuration from '../.dependency-cruiser.mjs';
import { folderCircles } from './folder-circles.ts';
import { fromRoot } from './root.mjs';
import { stylesheetFaults } from './stylesheets.ts';
import { wordsInMarkup } from './wording-apart.ts';

/**
 * Checks the import graph against the rules in .dependency-cruiser.mjs, and that every source file was
 * seen: with a compiler it cannot use, dependency-cruiser finds no modules and so no faults. Circles are
 * looked for between folders too, tests left aside; the web's stylesheets have floors as its modules do; and
 * what a screen says stands in no markup.
 */
process.chdir(fromRoot());
const folders = [
  'core',
  'lexicon',
  'web',
  'cli',
  'print',
  'ordering',
  'server',
  'school',
  'bench',
  'house',
  'test',
].filter((folder) => existsSync(folder));
const { modules, summary } = await importGraph();
const seen = new Set(modules.map(({ source }) => source));
const reasons = new Map(configuration.forbidden?.map(({ name, comment }) => [name, comment]));
const broken = summary.violations.map(
  ({ rule, from, to }) => `${rule.name}: ${from} → ${to}\n    ${reasons.get(rule.name)}`,
);
const unseen = folders
  .flatMap(sourcesIn)
  .filter((file) => !seen.has(file))
  .map((file) => `not seen by this check: ${file}`);
const isTest = (file: string) => /[.](test|journey)[.]tsx?$/.test(file);
const imports = modules
  .filter(({ source }) => !isTest(source) && !/^(test|bench)\//.test(source))
  .flatMap(({ source, dependencies }) =>
    dependencies
      .filter(({ resolved }) => seen.has(resolved) && !resolved.includes('node_modules'))
      .map(({ resolved }) => [source, resolved] as const),
  );
const circles = folderCircles(imports).map(
  (folders) =>
    `no-circles-of-folders: ${folders.join(', ')}\n    Folders that need each other are one folder, or hide another.`,
);
const sheets = stylesheetFaults(textsIn('web', '.css'), textsIn('web', '.tsx'));
const said = [...textsIn('web', '.tsx')].flatMap(([file, text]) => wordsInMarkup(file, text));
const faults = [...broken, ...circles, ...sheets, ...said, ...unseen];
process.stdout.write(
  [...faults, `${seen.size} modules seen, ${faults.length} faults.\n`].join('\n'),
);
process.exitCode = faults.length > 0 || seen.size === 0 ? 1 : 0;

async function importGraph(): Promise<ICruiseResult> {
  const { options, forbidden } = configuration;
  const rules = { ...options, ruleSet: { forbidden, options }, validate: true };
  const { output } = await cruise(folders, rules, options?.enhancedResolveOptions, {
    tsConfig: extractTsConfig('tsconfig.json'),
  });
  if (typeof output === 'string') throw new Error('The import graph came as text.');
  return output;
}

function sourcesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /(?<![.]d)[.](tsx?|mjs)$/.test(name) && !/(^|\/)(dist|fixtures)\//.test(name))
    .map((name) => `${folder}/${name}`);
}

/** All files of a folder with such an ending, each by its path below the folder. */
function textsIn(folder: string, ending: string): (readonly [string, string])[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => [name, readFileSync(`${folder}/${name}`, 'utf8')] as const);
}
