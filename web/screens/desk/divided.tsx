import type { Flip } from '../../../core/boards/shapes/board.ts';
import { dividedWord, flexedVowel, syllableTypes } from '../../../core/boards/shapes/divided.ts';
import type { SyllableType } from '../../../core/language/reading.ts';
import { readyEngine } from '../../state/engine-ready.ts';

const typeNames: Readonly<Record<SyllableType, string>> = {
  closed: 'closed',
  open: 'open',
  vce: 'silent e',
  team: 'vowel team',
  r: 'with r',
  cle: 'consonant and le',
  other: 'known as one',
};

/** Where a longer word divides, what its syllables are, and which vowel fades; nothing of a word laid card by card. */
export function Divided({ flip }: { readonly flip: Flip }) {
  const lexicon = readyEngine()?.lexicon;
  if (!flip.joints) return null;
  const flexed = lexicon ? flexedVowel(flip, lexicon) : null;
  return (
    <>
      <b>{dividedWord(flip)}</b>
      <span class="quiet">
        {' '}
        (
        {syllableTypes(flip)
          .map((type) => typeNames[type])
          .join(', ')}
        ){flexed && ` · flex the vowel: try ${flexed} short, then let it fade`} ·{' '}
      </span>
    </>
  );
}
