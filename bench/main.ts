import { readdirSync } from 'node:fs';
import { closeBrowser } from '../test/browser/visit.ts';
import type { Measurement } from './measure.ts';

/**
 * `npm run bench`: every bench/*.bench.ts, each of which exports `measurements()`, or only those named
 * (`npm run bench -- log search`). Prints how long or
 * how much, and the ratio to what was aimed at: below 1 is good. Ends with 1 when one misses its aim.
 */
const here = new URL('./', import.meta.url);
const asked = process.argv.slice(2).map((name) => `${name}.bench.ts`);
const files = readdirSync(here).filter(
  (name) => name.endsWith('.bench.ts') && (asked.length === 0 || asked.includes(name)),
);
const rows: Measurement[] = [];
for (const file of files.sort()) {
  process.stderr.write(`${file} …\n`);
  const bench: { measurements(): Promise<readonly Measurement[]> } = await import(
    new URL(file, here).href
  );
  rows.push(...(await bench.measurements()));
}
await closeBrowser();
const table = [
  ['', 'median', 'p95', 'aim', 'p95 / aim', 'runs'],
  ...rows.map(({ name, unit, median, p95, aim, runs }) => [
    name,
    `${median.toFixed(2)} ${unit}`,
    `${p95.toFixed(2)} ${unit}`,
    aim === undefined ? '–' : `${Number(aim.toFixed(1))} ${unit}`,
    aim === undefined ? '–' : (p95 / aim).toFixed(2),
    String(runs),
  ]),
];
const widths = table[0]?.map((_, column) =>
  Math.max(...table.map((row) => row[column]?.length ?? 0)),
);
for (const row of table) {
  const cells = row.map((cell, column) => {
    const width = widths?.[column] ?? 0;
    return column === 0 ? cell.padEnd(width) : cell.padStart(width);
  });
  process.stdout.write(`${cells.join('  ')}\n`);
}
process.exitCode = rows.some(({ p95, aim }) => aim !== undefined && p95 > aim) ? 1 : 0;
