import { ROWS } from '../language/correspondences.ts';
import type { Phoneme } from '../language/phonemes.ts';
import type { Target } from './target.ts';

/**
 * A card of several sounds spelled sound by sound: *ks* for x, *kw* for qu, *ul* for le, *id* for ed,
 * *yoo* for u. Only those letters that make no grapheme of their own, since *or* is not *ar*. None for
 * vowels with r, which are taken as wholes.
 */
export function compositesOf({ id, card, phonemes }: Target): ReadonlySet<string> {
  if (!card || card.kind === 'r-vowel' || phonemes.length < 2) return NONE;
  const found = made.get(id);
  if (found) return found;
  let spelled = [''];
  for (const phoneme of phonemes) {
    const next = spellingsOf(phoneme);
    spelled = spelled.flatMap((letters) => next.map((more) => letters + more));
  }
  const composites = new Set(spelled.filter((letters) => !graphemes.has(letters)));
  made.set(id, composites);
  return composites;
}

const NONE: ReadonlySet<string> = new Set();
const made = new Map<string, ReadonlySet<string>>();
const graphemes: ReadonlySet<string> = new Set(
  ROWS.filter(({ tier }) => tier < 3).map(({ grapheme }) => grapheme),
);

/** The usual spellings of one sound; of a weak vowel, any single vowel letter. */
function spellingsOf(phoneme: Phoneme): readonly string[] {
  if (phoneme === 'AX' || phoneme === 'IH') return ['a', 'e', 'i', 'o', 'u'];
  const rows = ROWS.filter(
    ({ tier, phonemes, grapheme }) =>
      tier < 3 && phonemes.length === 1 && phonemes[0] === phoneme && !grapheme.includes('_'),
  );
  return [...new Set(rows.map(({ grapheme }) => grapheme))].sort();
}
