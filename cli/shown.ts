/**
 * A text as the terminal may show it: every control sign but the line feed and the tab, and every sign that
 * turns the direction of writing, is written out as `\u001b`, so that nothing in a file of hers can color, move
 * or rewrite what stands on the screen. In JSON, where such a sign can only stand in a string, this is the same
 * value (RFC 8259, section 7).
 */
export function shown(text: string): string {
  return text.replace(
    /[^\P{Cc}\n\t]|[\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** Says a line on standard error. */
export function complain(line: string): void {
  process.stderr.write(`${shown(line)}\n`);
}
