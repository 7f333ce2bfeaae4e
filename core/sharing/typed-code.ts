/** 32 letters and digits without those that look alike, as on a school pass: five bits each. */
const SIGNS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';

/** The signs of base64url (RFC 4648, section 5): six bits each. */
const WIRE = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** So many bits a secret has. */
const BITS = 128;

/** A secret of 128 bits, which the wire has as 22 signs, as 26 letters and digits to type, in groups. */
export function makeTyped(secret: string): string {
  return inGroups(spell(bitsOf(secret, WIRE, 6), SIGNS, 5));
}

/** The secret that was typed, however it was grouped and in upper or lower case; null when it is none. */
export function parseTyped(text: string): string | null {
  const signs = plain(text);
  if (signs.length !== Math.ceil(BITS / 5) || !isOfSigns(signs)) return null;
  return spell(bitsOf(signs, SIGNS, 5), WIRE, 6);
}

/** A short code, as it is shown: letters and digits for twelve times five bits, in groups of four. */
export function makeShortCode(bytes: Uint8Array): string {
  const signs = Array.from(bytes.subarray(0, SHORT), (byte) => SIGNS[byte % SIGNS.length]).join('');
  return inGroups(signs);
}

/** So many bytes of chance a short code is made from, and so many signs it has. */
export const SHORT = 12;

/** The signs of a short code that was typed, in whatever way; null when it is none. */
export function parseShortCode(text: string): string | null {
  const signs = plain(text);
  return signs.length === SHORT && isOfSigns(signs) ? signs : null;
}

function plain(text: string): string {
  return text.toUpperCase().replace(/[\s-]/g, '');
}

function isOfSigns(text: string): boolean {
  return [...text].every((sign) => SIGNS.includes(sign));
}

function inGroups(signs: string): string {
  return signs.replace(/(.{4})(?=.)/g, '$1-');
}

/** The bits of a text in an alphabet, the first 128 of them. */
function bitsOf(text: string, alphabet: string, size: number): string {
  const bits = [...text].map((sign) => alphabet.indexOf(sign).toString(2).padStart(size, '0'));
  return bits.join('').slice(0, BITS);
}

function spell(bits: string, alphabet: string, size: number): string {
  let text = '';
  for (let from = 0; from < bits.length; from += size) {
    text += alphabet[Number.parseInt(bits.slice(from, from + size).padEnd(size, '0'), 2)];
  }
  return text;
}
