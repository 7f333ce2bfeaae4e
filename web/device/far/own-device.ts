import type { DeviceKeys } from '../../../core/sharing/rights-said.ts';
import { deviceIdOf, type KeyPairs, publicText } from './cipher.ts';

/** This device, as it takes part in shared classes. */
export interface OwnDevice extends DeviceKeys {
  readonly id: string;
  readonly keys: KeyPairs;
}

/** The device with these keys; `by` is what events written on it say. */
export async function ownDevice(keys: KeyPairs, by: string): Promise<OwnDevice> {
  const sign = await publicText(keys.sign.publicKey);
  const box = await publicText(keys.box.publicKey);
  return { id: await deviceIdOf(sign), sign, box, by, keys };
}

/** What others are told of it. */
export function keysOf({ sign, box, by }: OwnDevice): DeviceKeys {
  return { sign, box, by };
}
