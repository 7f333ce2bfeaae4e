import { deflateSync, inflateSync } from 'fflate';
import { joined, utf8 } from './bytes.ts';

/** So many bytes of one message go together; what is sealed of them fits into what a server passes on. */
const PIECE = 3072;

/** Before each piece stand which of how many it is, and of which message. */
const HEAD = 3;

let messages = 0;

/** A value as packed pieces: nearly always one; the plan of a warm-up may take two. */
export function piecesOf(value: unknown): readonly Uint8Array<ArrayBuffer>[] {
  const packed = deflateSync(utf8(JSON.stringify(value)));
  const count = Math.ceil(packed.length / PIECE);
  messages = (messages + 1) % 256;
  return Array.from({ length: count }, (_, place) =>
    joined(
      new Uint8Array([place, count, messages]),
      packed.subarray(place * PIECE, (place + 1) * PIECE),
    ),
  );
}

/** Puts pieces together again, of several devices at a time. */
export interface Pieces {
  /** The value whose last piece this is; null while some is missing, or when it is none. */
  take(from: string, piece: Uint8Array): unknown;
}

/** No piece has come yet. */
export function createPieces(): Pieces {
  const begun = new Map<string, readonly Uint8Array[]>();
  return {
    take(from, piece) {
      const [place = 0, count = 0, message = 0] = piece;
      const name = `${from} ${message}`;
      const before = begun.get(name) ?? [];
      if (before.length !== place || place >= count) {
        begun.delete(name);
        return null;
      }
      const all = [...before, piece.subarray(HEAD)];
      if (all.length < count) {
        begun.set(name, all);
        return null;
      }
      begun.delete(name);
      return unpacked(joined(...all));
    },
  };
}

function unpacked(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder().decode(inflateSync(bytes)));
  } catch {
    return null;
  }
}
