import {
  type Check,
  isListOf,
  isNullOr,
  isObject,
  isOneOf,
  isOptional,
  isShape,
  isText,
} from '../log/is-value.ts';
import { ROLES, type Role } from './role.ts';
import { isBytes, isCount, isId, isKey } from './wire.ts';

/** A device as it is known to a class. */
export interface DeviceKeys {
  /** With which it signs: the public half. Its id is the beginning of this key's hash. */
  readonly sign: string;
  /** With which secrets are sealed to it: the public half. */
  readonly box: string;
  /** What events written on it say in `by`. */
  readonly by: string;
}

/** The secrets of an epoch, sealed to one device or invitation; null for who does not read that lane. */
export interface SealedSecrets {
  readonly run: string | null;
  readonly private: string | null;
}

/** What a record on the lane of rights says. */
export type RightsSaid =
  /** The class is shared from here on; who says so owns it. The first epoch begins. */
  | { readonly says: 'found'; readonly device: DeviceKeys; readonly sealed: SealedSecrets }
  /** Whoever holds the invitation's keys may come in once, in this role, until then (milliseconds). */
  | {
      readonly says: 'invite';
      readonly invite: string;
      readonly sign: string;
      readonly box: string;
      readonly role: Role;
      readonly until: number;
      /** Of which epoch its secrets are: it counts in no other. Earlier builds did not say. */
      readonly epoch?: number | undefined;
      readonly sealed: SealedSecrets;
    }
  /** A device has come in; signed by the invitation's key. */
  | { readonly says: 'member'; readonly invite: string; readonly device: DeviceKeys }
  /** A device is let in without an invitation: one whose keys were seen, or that a server has lost. */
  | {
      readonly says: 'let-in';
      readonly id: string;
      readonly device: DeviceKeys;
      readonly role: Role;
      /** As of an invitation. */
      readonly epoch?: number | undefined;
      readonly sealed: SealedSecrets;
    }
  /** A device or an invitation counts no more. */
  | { readonly says: 'revoke'; readonly device: string }
  /** What these ids stand for, and all that was said of it, is erased everywhere for good (core/log/erased.ts). */
  | { readonly says: 'purge'; readonly ids: readonly string[] }
  /**
   * A new epoch begins, its secrets sealed to every device and invitation that stays; `chain` holds those
   * of the epoch before, sealed under the new ones, so that who comes later reads all.
   */
  | {
      readonly says: 'epoch';
      readonly epoch: number;
      readonly sealed: Readonly<Record<string, SealedSecrets>>;
      readonly chain: { readonly run: string; readonly private: string };
    }
  /**
   * What is in the records of these runs of places is in later ones as well, so that the server keeps nothing
   * there. It does so if its trace up to the last of these places is this one: after it was set back, other
   * records may be there.
   */
  | {
      readonly says: 'packed';
      readonly runs: readonly (readonly [number, number])[];
      readonly trace: number;
    }
  /** The class is deleted, everywhere. */
  | { readonly says: 'gone' };

/** Reads the body of a record on the lane of rights; null when it says nothing that we know. */
export function parseRightsSaid(body: string): RightsSaid | null {
  let value: unknown;
  try {
    value = JSON.parse(body);
  } catch {
    return null;
  }
  if (!isObject(value) || typeof value.says !== 'string') return null;
  const check = checks.get(value.says);
  return check?.(value) ? (value as unknown as RightsSaid) : null;
}

/** The body of a record that says this. */
export function makeRightsSaid(said: RightsSaid): string {
  return JSON.stringify(said);
}

const isDevice = isShape<DeviceKeys>({ sign: isKey, box: isKey, by: isId });
const isBox = isBytes(400);
const isSealed = isShape<SealedSecrets>({ run: isNullOr(isBox), private: isNullOr(isBox) });

/** No class has so many devices. */
const MOST_DEVICES = 200;

const isSealedToAll: Check<Readonly<Record<string, SealedSecrets>>> = (
  value,
): value is Readonly<Record<string, SealedSecrets>> => {
  if (!isObject(value)) return false;
  const entries = Object.entries(value);
  return entries.length <= MOST_DEVICES && entries.every(([id, one]) => isId(id) && isSealed(one));
};

const isRun: Check<readonly [number, number]> = (value): value is readonly [number, number] =>
  isListOf(isCount)(value) && value.length === 2;

const says = { says: isText };
const checks: ReadonlyMap<string, Check<unknown>> = new Map<string, Check<unknown>>([
  ['found', isShape({ ...says, device: isDevice, sealed: isSealed })],
  [
    'invite',
    isShape({
      ...says,
      invite: isId,
      sign: isKey,
      box: isKey,
      role: isOneOf(ROLES),
      until: isCount,
      epoch: isOptional(isCount),
      sealed: isSealed,
    }),
  ],
  ['member', isShape({ ...says, invite: isId, device: isDevice })],
  [
    'let-in',
    isShape({
      ...says,
      id: isId,
      device: isDevice,
      role: isOneOf(ROLES),
      epoch: isOptional(isCount),
      sealed: isSealed,
    }),
  ],
  ['revoke', isShape({ ...says, device: isId })],
  [
    'epoch',
    isShape({
      ...says,
      epoch: isCount,
      sealed: isSealedToAll,
      chain: isShape({ run: isBox, private: isBox }),
    }),
  ],
  ['purge', isShape({ ...says, ids: isListOf(isId) })],
  ['packed', isShape({ ...says, runs: isListOf(isRun), trace: isCount })],
  ['gone', isShape(says)],
]);
