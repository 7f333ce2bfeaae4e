import { effect, type Signal, signal } from '@preact/signals';
import { type GenericSchema, safeParse } from 'valibot';
import { type Shelf, shelf } from './shelf.ts';

/**
 * A value that is remembered on this device: read once, checked against its
 * schema, and written whenever it changes. Text that cannot be read is put
 * aside, never overwritten unseen, and `initial` takes its place.
 */
export function remembered<Value>(
  name: string,
  schema: GenericSchema<unknown, Value>,
  initial: Value,
  on: Shelf = shelf,
): Signal<Value> {
  const value = signal(parseRemembered(name, schema, on) ?? initial);
  let first = true;
  effect(() => {
    const now = value.value;
    if (first) first = false;
    else on.write(name, JSON.stringify(now));
  });
  return value;
}

/** What stands under a name, or null when nothing readable does. */
function parseRemembered<Value>(
  name: string,
  schema: GenericSchema<unknown, Value>,
  on: Shelf,
): Value | null {
  const text = on.read(name);
  if (text === null) return null;
  const parsed = safeParse(schema, parseJson(text));
  if (parsed.success) return parsed.output;
  on.setAside(name, text);
  return null;
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
