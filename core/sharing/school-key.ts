import { isObject } from '../log/is-value.ts';
import { isKey } from './wire.ts';

/**
 * The public half of a school's key: what a server offers, and what an owner lets into a class when the
 * school may open it. Its id in the class is that of the signing key, as of any device.
 */
export interface SchoolKey {
  readonly sign: string;
  readonly box: string;
}

/** Reads the file or the answer that has it; null when it is no such key. */
export function parseSchoolKey(text: string): SchoolKey | null {
  try {
    const value: unknown = JSON.parse(text);
    if (!isObject(value) || !isKey(value.sign) || !isKey(value.box)) return null;
    return { sign: value.sign, box: value.box };
  } catch {
    return null;
  }
}
