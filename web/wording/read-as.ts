import type { ReadAs } from '../../core/words/decodable.ts';

/** How a class reads a word that is not simply its cards, in a teacher's words; null where its cards say it all. */
export function readAsSaid(read: ReadAs): string | null {
  switch (read.kind) {
    case 'cards':
      return null;
    case 'by-heart':
      return 'Known by heart.';
    case 'flexed':
      return 'One vowel fades: children try its short sound and flex it.';
    case 'form':
      return `Read as ${read.of}, which is known by heart, with -${read.ending}.`;
    case 'compound':
      return `Read as ${read.parts[0]} and ${read.parts[1]}, which the class knows.`;
  }
}
