/**
 * The check number of a text: CRC-32 of its UTF-8 (ISO/IEC 3309; reflected polynomial EDB88320), from 0 to
 * 2^32 − 1. It finds every damage that lies within 32 bits in a row, and all but one in four billion of
 * others; it is no defense against somebody who forges. O(n), about 2 ms a megabyte.
 */
export function crc32(text: string): number {
  let crc = -1;
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at);
    if (unit < 0x80) crc = (crc >>> 8) ^ (TABLE[(crc ^ unit) & 0xff] as number);
    else {
      const point = text.codePointAt(at) as number;
      if (point > 0xffff) at++;
      for (const byte of bytesOf(point)) crc = (crc >>> 8) ^ (TABLE[(crc ^ byte) & 0xff] as number);
    }
  }
  return ~crc >>> 0;
}

/** UTF-8 of a sign beyond ASCII (RFC 3629); half a pair of surrogates is written like any other sign. */
function bytesOf(point: number): readonly number[] {
  const tail = (shift: number): number => 0x80 | ((point >> shift) & 0x3f);
  if (point < 0x800) return [0xc0 | (point >> 6), tail(0)];
  if (point < 0x10000) return [0xe0 | (point >> 12), tail(6), tail(0)];
  return [0xf0 | (point >> 18), tail(12), tail(6), tail(0)];
}

const TABLE: Int32Array = Int32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  return crc;
});
