/** Bytes as base64url without padding (RFC 4648, section 5). */
export function toText(bytes: Uint8Array): string {
  let binary = '';
  for (let from = 0; from < bytes.length; from += 8192) {
    binary += String.fromCharCode(...bytes.subarray(from, from + 8192));
  }
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** The bytes that `toText` wrote. Throws on what it did not write. */
export function fromText(text: string): Uint8Array<ArrayBuffer> {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (sign) => sign.charCodeAt(0));
}

/** Several as one. */
export function joined(...parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** A text as UTF-8. */
export function utf8(text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(text);
}
