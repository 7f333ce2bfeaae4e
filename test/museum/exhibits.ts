import { readdirSync, readFileSync } from 'node:fs';
import type { LogEvent } from '../../core/log/event.ts';
import type { PageRecord } from '../../web/device/log/database.ts';

/** What one earlier version stored, as it stored it (README.md). */
export interface Exhibits {
  readonly version: string;
  readonly copy: string;
  readonly lockedCopy: string;
  readonly passphrase: string;
  readonly database: {
    readonly loose: readonly LogEvent[];
    readonly pages: readonly PageRecord[];
    readonly heads: readonly LogEvent[];
  };
  readonly secondCopy: Readonly<Record<string, string>>;
  readonly shelf: Readonly<Record<string, string>>;
  readonly order: string;
  readonly links: readonly string[];
}

const folder = new URL('.', import.meta.url);

/** Every version in the museum, oldest first. */
export const VERSIONS: readonly string[] = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .sort();

/** All that a version left. */
export function exhibitsOf(version: string): Exhibits {
  const read = (name: string) => readFileSync(new URL(`${version}/${name}`, folder), 'utf8');
  return {
    version,
    copy: read('class-copy.jsonl'),
    lockedCopy: read('class-copy-locked.txt'),
    passphrase: 'quiet lantern, seven maps',
    database: JSON.parse(read('database.json')),
    secondCopy: JSON.parse(read('second-copy.json')),
    shelf: JSON.parse(read('shelf.json')),
    order: read('order.csv'),
    links: read('links.txt').trim().split('\n'),
  };
}
