import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';
import { fromRoot } from './root.mjs';

/**
 * Lays a brotli copy (`x.js.br`) beside each built file that gets smaller by it, once, at the best
 * quality, so that the server only has to hand it out. Fonts are brotli inside already.
 */
const folder = fromRoot('dist');
const squeezable = /\.(html|js|css|json|svg|bin|webmanifest)$/;

for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
  if (!squeezable.test(name)) continue;
  const content = readFileSync(join(folder, name));
  const packed = brotliCompressSync(content, {
    params: {
      [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
      [constants.BROTLI_PARAM_SIZE_HINT]: content.length,
    },
  });
  if (packed.length < content.length) writeFileSync(join(folder, `${name}.br`), packed);
}
