import { say } from './wording.ts';

/** The largest file taken, in bytes: about 800,000 words. */
const largest = 5_000_000;

/** The text of a plain text file, or what to do instead. */
export type OpenedText =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'refused'; readonly code: 'too-large' | 'no-text'; readonly message: string };

/**
 * Reads a file as text: UTF-8, or else the usual encoding of older Windows
 * files. A file that holds no plain text (a Word document, a PDF) is refused.
 */
export function readTextBytes(bytes: Uint8Array): OpenedText {
  if (bytes.length > largest) {
    return {
      kind: 'refused',
      code: 'too-large',
      message: say.openFile.thisFileIsLarger,
    };
  }
  if (isBinary(bytes)) {
    return {
      kind: 'refused',
      code: 'no-text',
      message: say.openFile.thisFileHoldsNo,
    };
  }
  return { kind: 'text', text: decode(bytes).replaceAll('\r\n', '\n') };
}

function isBinary(bytes: Uint8Array): boolean {
  const isPdf = String.fromCharCode(...bytes.subarray(0, 5)) === '%PDF-';
  return isPdf || bytes.subarray(0, 4000).includes(0);
}

function decode(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
