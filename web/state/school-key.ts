import { parseSchoolKey, type SchoolKey } from '../../core/sharing/school-key.ts';
import { deviceIdOf } from '../device/far/cipher.ts';
import { fingerprintOf } from '../device/far/school-key.ts';
import { HERE } from './in-step.ts';

/** A school's key as it is shown before it is let in. */
export interface OfferedKey {
  readonly key: SchoolKey;
  /** Its id in a class. */
  readonly id: string;
  readonly fingerprint: string;
}

/** The key that the server offers for the school; null when it offers none, or is out of reach. */
export async function offeredKey(): Promise<OfferedKey | null> {
  try {
    const answer = await fetch(`${HERE}v1/school-key`);
    const key = answer.status === 200 ? parseSchoolKey(await answer.text()) : null;
    return key && { key, id: await deviceIdOf(key.sign), fingerprint: await fingerprintOf(key) };
  } catch {
    return null;
  }
}
