import { correspondenceById, correspondencesByGrapheme } from '../language/correspondences.ts';
import type { PapersWord } from '../log/event.ts';
import type { Random } from '../random.ts';
import type { SampleChild } from './sample-children.ts';

/** What an invented child writes for a word: as it stands, or with one slip of its kind. */
export function writeAsChild(
  { slips, troubles }: SampleChild,
  { word, cards }: PapersWord,
  random: Random,
): string {
  for (const trouble of troubles) {
    if (random.fraction() >= trouble.often) continue;
    if (trouble.kind === 'silent-e' && /[^aeiou]e$/.test(word)) return word.slice(0, -1);
    if (trouble.kind === 'second-of-cluster') {
      const cluster = /^[^aeiou][lrtpcnmw](?=[aeiou])/.exec(word);
      if (cluster) return word[0] + word.slice(2);
    }
    if (trouble.kind === 'sound') {
      const wrong = cards.find((id) => trouble.on.includes(id));
      const letters = wrong && correspondenceById.get(wrong)?.grapheme;
      const written = LETTERS_OF[trouble.says];
      if (letters && written) return word.replace(letters, written);
    }
  }
  if (random.fraction() >= slips.known * 3) return word;
  const id = cards[random.below(cards.length)];
  const card = id && correspondenceById.get(id);
  if (!card || card.grapheme.includes('_')) return word;
  const others = [...correspondencesByGrapheme.values()]
    .flat()
    .filter(
      ({ grapheme, phonemes, kind }) =>
        kind === card.kind &&
        grapheme !== card.grapheme &&
        !grapheme.includes('_') &&
        phonemes.join() === card.phonemes.join(),
    );
  const other = others[random.below(Math.max(1, others.length))];
  return other ? word.replace(card.grapheme, other.grapheme) : word;
}

const LETTERS_OF: Readonly<Partial<Record<string, string>>> = { EH: 'e', F: 'f', D: 'd' };
