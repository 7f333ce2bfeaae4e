import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * The absolute path of something in the project, wherever the command was typed.
 *
 * @param {...string} parts path parts below the project's folder
 */
export function fromRoot(...parts) {
  return join(root, ...parts);
}
