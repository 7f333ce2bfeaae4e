import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { GenericSchema } from 'valibot';
import { beforeAll, expect, it, vi } from 'vitest';
import { makeRandom } from '../../core/random.ts';
import type { Shelf } from '../../web/device/shelf.ts';
import { hostileText } from './hostile-text.ts';

/** What is remembered on the shelf, as each screen and signal asks for it. */
const asked = vi.hoisted(
  () =>
    [] as { readonly name: string; readonly schema: GenericSchema; readonly initial: unknown }[],
);
const { remembered } = await vi.importActual<typeof import('../../web/device/remembered.ts')>(
  '../../web/device/remembered.ts',
);
vi.mock('../../web/device/remembered.ts', async () => {
  const { signal } = await import('@preact/signals');
  return {
    remembered(name: string, schema: GenericSchema, initial: unknown) {
      asked.push({ name, schema, initial });
      return signal(initial);
    },
  };
});

/** Every file that remembers something. */
const web = join(import.meta.dirname, '../../web');
const files = readdirSync(web, { recursive: true, encoding: 'utf8' })
  .filter((name) => /(?<!\.test)\.tsx?$/.test(name))
  .filter((name) => readFileSync(join(web, name), 'utf8').includes('= remembered('));

beforeAll(async () => {
  for (const name of files) await import(join(web, name));
});

it('everything that is remembered on the shelf is read without a stumble, or put aside as it was', () => {
  expect(asked.length).toBeGreaterThanOrEqual(files.length);
  const random = makeRandom(Number(process.env.PROPERTY_SEED ?? 1));
  for (const { name, schema, initial } of asked) {
    const samples = samplesOf(schema, initial);
    for (let inputs = 0; inputs < INPUTS; inputs++) {
      const text =
        inputs < samples.length ? (samples[inputs] as string) : hostileText(samples, random);
      const aside: string[] = [];
      const value = remembered(name, schema, initial, shelfWith(text, aside)).peek();
      const isKept = aside.length === 0;
      expect(isKept || (aside[0] === text && value === initial)).toBe(true);
    }
    const [valid = ''] = samples;
    expect([name, remembered(name, schema, null, shelfWith(valid, [])).peek()]).not.toEqual([
      name,
      null,
    ]);
  }
});

const INPUTS = 60;

function shelfWith(text: string, aside: string[]): Shelf {
  return {
    read: () => text,
    write() {},
    remove() {},
    setAside: (_, put) => void aside.push(put),
  };
}

/** Texts that the schema takes: one with something in every field, and what stands there at first. */
function samplesOf(schema: GenericSchema, initial: unknown): readonly string[] {
  return [JSON.stringify(initial), JSON.stringify(exampleOf(schema) ?? initial)];
}

interface Described {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Described>>;
  readonly item?: Described;
  readonly value?: Described;
  readonly wrapped?: Described;
  readonly options?: readonly unknown[];
  readonly literal?: unknown;
  readonly items?: readonly Described[];
}

/** A value with something in every field of a schema. */
function exampleOf(schema: unknown): unknown {
  const { type, entries, item, value, wrapped, options, literal, items } = schema as Described;
  if (entries) {
    const fields = Object.entries(entries).map(([name, field]) => [name, exampleOf(field)]);
    return Object.fromEntries(fields);
  }
  if (type === 'record') return { a: exampleOf(value) };
  if (item) return [exampleOf(item), exampleOf(item)];
  if (items) return items.map(exampleOf);
  if (wrapped) return exampleOf(wrapped);
  if (type === 'picklist') return options?.[0];
  if (options) return exampleOf(options[0]);
  return type === 'literal' ? literal : EXAMPLES[type];
}

const EXAMPLES: Readonly<Record<string, unknown>> = { string: 'a', number: 1, boolean: true };
