import { readFileSync, writeFileSync } from 'node:fs';
import { encodeScreen } from '../../core/words/screen-format.ts';
import { screenKeys } from './keys.ts';
import { parseHarmlessList, parseScreenList } from './list.ts';

/**
 * Writes core/words/screen-data.ts from the reviewed lists beside this file:
 * `npx tsx lexicon/screen/build.ts`. The result is committed, so that the core
 * needs no build step; a test fails when it does not match the lists.
 */
const read = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');
const data = encodeScreen(
  screenKeys(parseScreenList(read('list.tsv')), parseHarmlessList(read('harmless.tsv'))),
);
const groups = data.map(([mark, hashes]) => `  [${mark}, '${hashes}'],`).join('\n');
writeFileSync(
  new URL('../../core/words/screen-data.ts', import.meta.url),
  `import type { ScreenData } from './screen-format.ts';

/**
 * The reviewed screen as hashes (see screen-format.ts), written by
 * lexicon/screen/build.ts from lexicon/screen/list.tsv and harmless.tsv. Not to
 * be edited by hand.
 */
export const SCREEN_DATA: ScreenData = [
${groups}
];
`,
);
