import { strToU8, type Zippable, zipSync } from 'fflate';

/** The earliest day that a zip archive can name; its fields are those of the local clock. */
const PACKED = new Date(1980, 0, 1);

/** Parts in their order as a zip archive without the time of day; those in `stored` are not compressed. */
export function steadyZip(
  parts: readonly (readonly [name: string, content: Uint8Array | string])[],
  stored: readonly string[] = [],
): Uint8Array {
  const packed: Zippable = {};
  for (const [name, content] of parts) {
    const bytes = typeof content === 'string' ? strToU8(content) : content;
    packed[name] = [bytes, { mtime: PACKED, level: stored.includes(name) ? 0 : 6 }];
  }
  return zipSync(packed);
}
