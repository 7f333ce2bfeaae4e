import type { Weight } from './page.ts';
import type { Typeface } from './typeface.ts';

/** Breaks a text into lines no wider than `width` mm; a single word that is wider stands alone. */
export function wrap(
  text: string,
  width: number,
  size: number,
  typeface: Typeface,
  weight: Weight = 'regular',
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && typeface.lay(longer, size, weight).width > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}
