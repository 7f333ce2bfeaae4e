import fc from 'fast-check';
import { deflateSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { createPieces, piecesOf } from './live-pieces.ts';

describe('what is said of the moment', () => {
  it('is the same again from its pieces, of several devices at a time', () => {
    const values = fc.array(fc.jsonValue(), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(values, (said) => {
        const pieces = createPieces();
        const all = said.map((value) => piecesOf(value));
        const heard = all.map((own, device) =>
          own.map((piece) => pieces.take(`device ${device}`, piece)).at(-1),
        );
        expect(heard).toEqual(said.map((value) => JSON.parse(JSON.stringify(value))));
      }),
    );
  });

  it('takes several pieces when it is long, each small enough, and none without the one before', () => {
    const long = Array.from({ length: 3000 }, (_, n) => Math.sin(n));
    const own = piecesOf(long);
    expect(own.length).toBeGreaterThan(2);
    for (const piece of own) expect(piece.length).toBeLessThan(3100);
    const pieces = createPieces();
    expect(own.map((piece) => pieces.take('a', piece)).at(-1)).toEqual(long);
    const holed = own.filter((_, place) => place !== 1);
    expect(holed.map((piece) => pieces.take('a', piece))).toEqual(holed.map(() => null));
  });

  it('is nothing when it cannot be read', () => {
    expect(createPieces().take('a', new Uint8Array([0, 1, 5, 9, 9, 9]))).toBeNull();
    expect(createPieces().take('a', new Uint8Array())).toBeNull();
    const flood = deflateSync(new TextEncoder().encode(`"${' '.repeat(2_000_000)}"`));
    expect(createPieces().take('a', new Uint8Array([0, 1, 5, ...flood]))).toBeNull();
  });
});
