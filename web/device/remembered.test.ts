import { number, object } from 'valibot';
import { describe, expect, it } from 'vitest';
import { remembered } from './remembered.ts';
import type { Shelf } from './shelf.ts';

const schema = object({ step: number() });

function shelfWith(held: Record<string, string>): Shelf & { readonly held: Map<string, string> } {
  const map = new Map(Object.entries(held));
  return {
    held: map,
    read: (name) => map.get(name) ?? null,
    write: (name, text) => map.set(name, text),
    remove: (name) => map.delete(name),
    setAside: (name, text) => map.set(`${name} aside`, text),
  };
}

describe('a remembered value', () => {
  it('is what was written last', () => {
    const shelf = shelfWith({});
    remembered('place', schema, { step: 0 }, shelf).value = { step: 24 };
    expect(remembered('place', schema, { step: 0 }, shelf).value).toEqual({ step: 24 });
  });

  it('writes nothing before it changes', () => {
    const shelf = shelfWith({});
    remembered('place', schema, { step: 0 }, shelf);
    expect(shelf.held.size).toBe(0);
  });

  it.each(['{"step":"many"}', '{"step":', 'null', ''])(
    'puts %j aside, which cannot be read, and begins afresh',
    (text) => {
      const shelf = shelfWith({ place: text });
      expect(remembered('place', schema, { step: 0 }, shelf).value).toEqual({ step: 0 });
      expect(shelf.held.get('place aside')).toBe(text);
    },
  );
});
