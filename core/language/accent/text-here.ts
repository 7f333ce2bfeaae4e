import { type Accent, isBritish } from './accent.ts';
import { britishSpelling } from './british-spelling.ts';

/** A text of American words as a class spells them: *My neighbour has a grey cat.* Capitals stay. */
export function textHere(text: string, accent: Accent): string {
  if (!isBritish(accent)) return text;
  return text.replace(/[A-Za-z]+/g, (written) => {
    const here = britishSpelling(written.toLowerCase());
    if (here === null) return written;
    return /^[A-Z]/.test(written) ? here.charAt(0).toUpperCase() + here.slice(1) : here;
  });
}
