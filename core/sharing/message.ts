import type { ClassId } from '../ids.ts';
import {
  type Check,
  isEither,
  isFlag,
  isListOf,
  isNullOr,
  isObject,
  isOptional,
  isShape,
  isText,
} from '../log/is-value.ts';
import {
  type ClassRecord,
  type EmptyRun,
  isEmptyRun,
  isKept,
  isRecord,
  type KeptRecord,
} from './record.ts';
import { isBytes, isCount, isId, isKey, isSignature } from './wire.ts';

/** The version of what devices and server say to each other; a server takes this one and the one before. */
export const PROTOCOL = 1;

/** So many records go in one message at most. */
export const MOST_RECORDS = 64;

/** The longest message there is, in signs. */
export const LONGEST_MESSAGE = 512 * 1024;

/** What is said live, sealed: at most so many bytes. It is passed on to who follows the class now, and never kept. */
const MOST_LIVE = 4096;

/** What a device says of itself, sealed: at most so many bytes. */
const MOST_PRESENCE = 512;

/** What a device says. `k` numbers what is answered; `c` is the class. */
export type DeviceMessage =
  /** Who it is: its id, its key, and the nonce of the challenge signed with it. */
  | {
      readonly t: 'proof';
      readonly device: string;
      readonly key: string;
      readonly nonce: string;
      readonly signature: string;
    }
  /** It has everything up to `after`, with this trace (follower.ts). */
  | { readonly t: 'follow'; readonly c: ClassId; readonly after: number; readonly trace: number }
  /** To keep, all of them or none; `pass` lets a class begin. */
  | {
      readonly t: 'append';
      readonly k: number;
      readonly c: ClassId;
      readonly records: readonly ClassRecord[];
      readonly pass?: string | undefined;
    }
  /** What opens an invitation, sealed under the secret that only its link has. */
  | {
      readonly t: 'deposit';
      readonly k: number;
      readonly c: ClassId;
      readonly invite: string;
      readonly box: string;
    }
  /** Asks for what was deposited. */
  | { readonly t: 'fetch'; readonly k: number; readonly invite: string }
  /** An act or a state of a warm-up as it happens; `n` counts them, so that an old one is known. */
  | LiveMessage
  /** It is there: said every ten seconds, and when something of it has changed. */
  | PresenceMessage;

/** To whom something live is said when it is for all walls of the class, and for nobody else. */
export const TO_WALLS = 'walls';

/**
 * Something said live in a class that the device follows; whoever was away has missed it. `s` says to whom:
 * to all walls, or to the wall of this id; anything else, to the devices that are in the class.
 */
export interface LiveMessage {
  readonly t: 'live';
  readonly c: ClassId;
  readonly s: string;
  readonly n: number;
  readonly body: string;
}

/** A device says that it is there, and sealed what it is. */
export interface PresenceMessage {
  readonly t: 'here';
  readonly c: ClassId;
  readonly body: string;
}

/** What the server says. */
export type ServerMessage =
  /** `now` is its clock in milliseconds. */
  | {
      readonly t: 'challenge';
      readonly v: number;
      readonly nonce: string;
      readonly now: number;
    }
  | { readonly t: 'welcome' }
  /**
   * The class has records up to `head`. Unless the server `knows` what the device has as the beginning of
   * them, it has lost some, and the device asks again from 0.
   */
  | { readonly t: 'following'; readonly c: ClassId; readonly head: number; readonly knows: boolean }
  /** All records after `from` up to `to`, in order; places of which nothing is sent as one run. */
  | {
      readonly t: 'records';
      readonly c: ClassId;
      readonly from: number;
      readonly to: number;
      readonly head: number;
      readonly records: readonly (KeptRecord | EmptyRun)[];
    }
  /** They are kept for good; those known already are at the places that they had. */
  | { readonly t: 'kept'; readonly k: number; readonly seqs: readonly number[] }
  /** Nothing of it is kept; `id` is the record on which it failed, null when it was none. */
  | { readonly t: 'refused'; readonly k: number; readonly id: string | null; readonly why: string }
  /** To be asked again after so many milliseconds. */
  | { readonly t: 'later'; readonly k: number; readonly ms: number }
  | { readonly t: 'deposited'; readonly k: number }
  | { readonly t: 'fetched'; readonly k: number; readonly box: string | null }
  /** What another device has just said, as it said it. */
  | (LiveMessage & { readonly from: string })
  | (PresenceMessage & { readonly from: string })
  /** A device that had said that it is there is gone, or has been silent for 25 seconds. */
  | { readonly t: 'left'; readonly c: ClassId; readonly from: string }
  /** The class cannot be followed, or no longer. */
  | { readonly t: 'closed'; readonly c: ClassId; readonly why: string };

/** Reads what a device said; null when it is nothing that we know. */
export function parseDeviceMessage(text: string): DeviceMessage | null {
  return parse<DeviceMessage>(text, deviceChecks);
}

/** Reads what the server said; null when it is nothing that we know. */
export function parseServerMessage(text: string): ServerMessage | null {
  return parse<ServerMessage>(text, serverChecks);
}

/** A message as it goes over the wire. */
export function makeMessage(message: DeviceMessage | ServerMessage): string {
  return JSON.stringify(message);
}

function parse<Message>(text: string, checks: ReadonlyMap<string, Check<unknown>>): Message | null {
  if (text.length > LONGEST_MESSAGE) return null;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isObject(value) || typeof value.t !== 'string') return null;
  return checks.get(value.t)?.(value) ? (value as Message) : null;
}

const isShort: Check<string> = (value): value is string => isText(value) && value.length <= 300;
const isBox = isBytes(2000);

const isRecords: Check<readonly ClassRecord[]> = (value): value is readonly ClassRecord[] =>
  isListOf(isRecord)(value) && value.length > 0 && value.length <= MOST_RECORDS;

const live = { t: isText, c: isId, s: isId, n: isCount, body: isBytes(MOST_LIVE) };
const here = { t: isText, c: isId, body: isBytes(MOST_PRESENCE) };

const deviceChecks: ReadonlyMap<string, Check<unknown>> = new Map<string, Check<unknown>>([
  [
    'proof',
    isShape({ t: isText, device: isId, key: isKey, nonce: isShort, signature: isSignature }),
  ],
  ['follow', isShape({ t: isText, c: isId, after: isCount, trace: isCount })],
  [
    'append',
    isShape({ t: isText, k: isCount, c: isId, records: isRecords, pass: isOptional(isShort) }),
  ],
  ['deposit', isShape({ t: isText, k: isCount, c: isId, invite: isId, box: isBox })],
  ['fetch', isShape({ t: isText, k: isCount, invite: isId })],
  ['live', isShape(live)],
  ['here', isShape(here)],
]);

const serverChecks: ReadonlyMap<string, Check<unknown>> = new Map<string, Check<unknown>>([
  ['challenge', isShape({ t: isText, v: isCount, nonce: isShort, now: isCount })],
  ['welcome', isShape({ t: isText })],
  ['following', isShape({ t: isText, c: isId, head: isCount, knows: isFlag })],
  [
    'records',
    isShape({
      t: isText,
      c: isId,
      from: isCount,
      to: isCount,
      head: isCount,
      records: isListOf(isEither(isKept, isEmptyRun)),
    }),
  ],
  ['kept', isShape({ t: isText, k: isCount, seqs: isListOf(isCount) })],
  ['refused', isShape({ t: isText, k: isCount, id: isNullOr(isId), why: isShort })],
  ['later', isShape({ t: isText, k: isCount, ms: isCount })],
  ['deposited', isShape({ t: isText, k: isCount })],
  ['fetched', isShape({ t: isText, k: isCount, box: isNullOr(isBox) })],
  ['live', isShape({ ...live, from: isId })],
  ['here', isShape({ ...here, from: isId })],
  ['left', isShape({ t: isText, c: isId, from: isId })],
  ['closed', isShape({ t: isText, c: isId, why: isShort })],
]);
