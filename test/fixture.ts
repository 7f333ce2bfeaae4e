import { readFileSync } from 'node:fs';

/** The rows of a table of outside values in test/fixtures, by column name. */
export function readFixture(name: string): readonly Readonly<Record<string, string>>[] {
  const text = readFileSync(new URL(`./fixtures/${name}`, import.meta.url), 'utf8');
  const [header = '', ...lines] = text.trimEnd().split('\n');
  const columns = header.split('\t');
  return lines.map((line) => {
    const cells = line.split('\t');
    return Object.fromEntries(columns.map((column, at) => [column, cells[at] ?? '']));
  });
}
