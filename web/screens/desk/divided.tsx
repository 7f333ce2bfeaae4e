import type { Flip } from '../../../core/boards/shapes/board.ts';
import { dividedWord, flexedVowel, syllableTypes } from '../../../core/boards/shapes/divided.ts';
import type { SyllableType } from '../../../core/language/reading.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { say } from './wording.ts';

const typeNames: Readonly<Record<SyllableType, string>> = {
  closed: say.divided.closed,
  open: say.divided.open,
  vce: say.divided.silentE,
  team: say.divided.vowelTeam,
  r: say.divided.withR,
  cle: say.divided.consonantAndLe,
  other: say.divided.knownAsOne,
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
        ){flexed && say.divided.flexTheVowelTry(flexed)} ·{' '}
      </span>
    </>
  );
}
