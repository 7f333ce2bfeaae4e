import { deflateSync, Inflate } from 'fflate';
import { joined, utf8 } from './bytes.ts';

/** So many bytes of one message go together; what is sealed of them fits into what a server passes on. */
const PIECE = 3072;

/** Before each piece stand which of how many it is, and of which message. */
const HEAD = 3;

/** A plan takes two pieces, and unfolds to some tens of kilobytes; who sends more wants to fill a memory. */
const MOST_PIECES = 16;
const MOST_BYTES = 1024 * 1024;

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

/** No piece has come yet. The pieces of one message come one after another, so each device has one begun. */
export function createPieces(): Pieces {
  const begun = new Map<
    string,
    { readonly message: number; readonly all: readonly Uint8Array[] }
  >();
  return {
    take(from, piece) {
      const [place = 0, count = 0, message = 0] = piece;
      const before = begun.get(from);
      const earlier = before?.message === message ? before.all : [];
      begun.delete(from);
      if (earlier.length !== place || place >= count || count > MOST_PIECES) return null;
      const all = [...earlier, piece.subarray(HEAD)];
      if (all.length === count) return unpacked(all);
      begun.set(from, { message, all });
      return null;
    },
  };
}

function unpacked(pieces: readonly Uint8Array[]): unknown {
  const parts: Uint8Array[] = [];
  let size = 0;
  const unfolding = new Inflate((part) => {
    size += part.length;
    if (size > MOST_BYTES) throw new Error('It unfolds to far more than a plan.');
    parts.push(part);
  });
  try {
    for (const [place, piece] of pieces.entries()) {
      unfolding.push(piece, place === pieces.length - 1);
    }
    return JSON.parse(new TextDecoder().decode(joined(...parts)));
  } catch {
    return null;
  }
}
