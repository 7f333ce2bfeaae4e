/**
 * Builds the word list: `npx tsx lexicon/build.ts`. Writes words.bin and
 * meanings.json to lexicon/dist, and the statistics beside them.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildList } from './build-list.ts';
import { makeReport, makeSummary } from './report.ts';

const folder = fileURLToPath(new URL('./dist/', import.meta.url));
const { words, meanings, files } = buildList();
mkdirSync(folder, { recursive: true });
writeFileSync(`${folder}words.bin`, files.words.bytes);
writeFileSync(`${folder}meanings.json`, files.meanings.bytes);
writeFileSync(`${folder}statistics.txt`, makeReport(words, files, meanings.size));
process.stderr.write(`${makeSummary(words, files)}\n`);
