import type { SchoolKey } from '../core/sharing/school-key.ts';
import { makeKeys, packKeys, unpackKeys } from '../web/device/far/cipher.ts';
import { type OwnDevice, ownDevice } from '../web/device/far/own-device.ts';

/** A new key of a school: the public half for its server, and the file that never goes there. */
export async function makeSchoolKey(): Promise<{
  readonly key: SchoolKey;
  readonly secretFile: string;
}> {
  const keys = await makeKeys(true);
  const { sign, box } = await ownDevice(keys, '');
  return { key: { sign, box }, secretFile: `${await packKeys(keys)}\n` };
}

/** The school as it takes part in classes, from its private file; null when the file is something else. */
export async function readSchool(secretFile: string): Promise<OwnDevice | null> {
  try {
    const own = await ownDevice(await unpackKeys(secretFile), '');
    return { ...own, by: own.id };
  } catch {
    return null;
  }
}
