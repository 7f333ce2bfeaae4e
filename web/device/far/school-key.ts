import type { SchoolKey } from '../../../core/sharing/school-key.ts';
import { makeTyped } from '../../../core/sharing/typed-code.ts';
import { toText, utf8 } from './bytes.ts';

/**
 * What a person compares to know a school's key: the first 128 bits of the SHA-256 of both its halves, as
 * letters and digits in groups. A server that offers another key cannot offer this.
 */
export async function fingerprintOf({ sign, box }: SchoolKey): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', utf8(`sweepline/1 school ${sign} ${box}`));
  return makeTyped(toText(new Uint8Array(hash).subarray(0, 16)));
}
