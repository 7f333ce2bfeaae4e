import type { StoreError, StoreFailure } from '../../../core/log/event-store.ts';

/** What went wrong with storage, in her words; `thrown` is what the browser threw or gave as error. */
export function storeFailure(thrown: unknown): StoreFailure {
  return failureOf(codeByName.get(nameOf(thrown)) ?? 'broken');
}

/** A failure of this kind, with its sentence. */
export function failureOf(code: StoreError['code']): StoreFailure {
  return { error: { code, message: sentences[code] } };
}

/** Names of DOMException (WebIDL; Indexed Database API 3.0) by what they mean here. */
const codeByName: ReadonlyMap<string, StoreError['code']> = new Map([
  ['QuotaExceededError', 'full'],
  ['VersionError', 'newer'],
  ['SecurityError', 'refused'],
  ['InvalidAccessError', 'refused'],
  ['NotAllowedError', 'refused'],
  ['ReferenceError', 'refused'],
  ['TypeError', 'refused'],
  ['DataCloneError', 'unkeepable'],
  ['DataError', 'unkeepable'],
  ['RangeError', 'unkeepable'],
]);

function nameOf(thrown: unknown): string {
  return thrown instanceof Error || thrown instanceof DOMException ? thrown.name : '';
}

const sentences: Readonly<Record<StoreError['code'], string>> = {
  refused:
    'This browser lets Sweepline keep nothing, perhaps since the window is a private one. You can go on; save a copy as a file before you close the window.',
  full: 'There is no more room on this device. You can go on; save a copy as a file, then make room and try again.',
  newer:
    'What is kept on this device was written by a newer Sweepline. Load this page again to get the newest one.',
  busy: 'Another window is writing there. Close all other windows of Sweepline and try again.',
  slow: 'What is kept on this device does not answer. You can go on; save a copy as a file before you close the window, or close the browser and open it again.',
  forgotten: 'This class was deleted on this device. What was added to it since is not kept.',
  unkeepable:
    'One thing could not be kept on this device and was set aside. Everything else is kept; save a copy as a file.',
  broken:
    'The browser could not reach what is kept on this device. You can go on; save a copy as a file, then close the browser and open it again.',
};
