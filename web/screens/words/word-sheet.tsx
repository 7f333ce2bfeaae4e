import { isBritish } from '../../../core/language/accent/accent.ts';
import { cardLabel, wordLabel } from '../../../core/language/accent/sound-style.ts';
import { graphemeShown } from '../../../core/language/card-id.ts';
import type {
  CardReading,
  Reading,
  Syllable,
  SyllableType,
} from '../../../core/language/reading.ts';
import { readAs } from '../../../core/words/decodable.ts';
import { Card } from '../../controls/card.tsx';
import { accent } from '../../state/accent.ts';
import { settleWord } from '../../state/class-words.ts';
import type { Engine } from '../../state/engine.ts';
import { meanings } from '../../state/meanings.ts';
import { taught } from '../../state/progress.ts';
import { settings } from '../../state/settings.ts';
import { verdictOf } from '../../state/verdict-of.ts';
import { cardName } from '../../wording/card-name.ts';
import { readAsSaid } from '../../wording/read-as.ts';
import { piecesOfReading } from './pieces.ts';
import { say } from './wording.ts';

const typeNames: Readonly<Record<SyllableType, string>> = {
  closed: say.wordSheet.closed,
  open: say.wordSheet.open,
  vce: say.wordSheet.silentE,
  team: say.wordSheet.vowelTeam,
  r: say.wordSheet.vowelWithR,
  cle: say.wordSheet.consonantLe,
  other: say.wordSheet.ofNoTaughtType,
};

interface WordSheetProps {
  readonly index: number;
  readonly ready: Engine;
  readonly onClose: () => void;
}

/** A word opened: its syllables, its cards, what in it is irregular, and what it means. */
export function WordSheet({ index, ready, onClose }: WordSheetProps) {
  const { lexicon, screen } = ready;
  const word = lexicon.word(index);
  const { verdict, category, reason } = verdictOf(index, lexicon, screen);
  const meaning = meanings.value?.meaningOf(word);
  const readings = lexicon.readings(index);
  const read = readAs(index, lexicon, taught.value);
  const said = read && readAsSaid(read);
  return (
    <div class="word-sheet">
      {readings.map((reading, at) => (
        <WordReading key={reading.sounds.join(' ')} reading={reading} also={at > 0} />
      ))}
      {said && <p class="quiet">{said}</p>}
      {meaning && <p>{meaning}</p>}
      {verdict === 'ask' && (
        <p class="asked">
          {say.wordSheet.yoursToDecide(
            category === 'name' ? reason : say.wordSheet.it(reason ?? ''),
          )}
        </p>
      )}
      {category === 'teacher' && <p class="asked">{say.wordSheet.youAllowed}</p>}
      <p class="popover-buttons">
        <button
          type="button"
          class="button"
          onClick={() => {
            settleWord(verdict === 'ask' ? 'allow' : 'block', word);
            onClose();
          }}
        >
          {verdict === 'ask' ? say.wordSheet.allowInMyClass : say.wordSheet.neverInMyClass}
        </button>
        <button type="button" class="button plain close" onClick={onClose}>
          {say.wordSheet.close}
        </button>
      </p>
    </div>
  );
}

function WordReading({ reading, also }: { readonly reading: Reading; readonly also: boolean }) {
  const { word, syllables, cards } = reading;
  const irregular = cards.filter(({ regular }) => !regular);
  const sound = (card: CardReading) =>
    cardLabel(reading, cards.indexOf(card), accent.value, settings.value.notation);
  const nameOf = (card: CardReading, part: string) => {
    if (part === 'silent-e') return say.wordSheet.silentE;
    const isOwn = card.regular || card.phonemes.length === 0 || !isBritish(accent.value);
    return isOwn ? cardName(card.id) : `${graphemeShown(card.grapheme)}, ${sound(card)}`;
  };
  return (
    <div class="reading">
      {also && <p class="quiet small">{say.wordSheet.alsoSaid(sounds(reading))}</p>}
      <p class="syllables">{syllables.map(({ from, to }) => word.slice(from, to)).join('·')}</p>
      <ul class="word-cards">
        {piecesOfReading(cards).map(({ card, part }) => (
          <li
            key={`${card.letters[0]} ${part}`}
            class={card.regular ? '' : 'irregular'}
            title={nameOf(card, part)}
          >
            <span class="for-ears">
              {nameOf(card, part)}
              {card.regular ? '' : say.wordSheet.irregular}
            </span>
            {part === 'vowel' && (
              <span class="card arch" aria-hidden="true">
                {card.grapheme[0]}
              </span>
            )}
            {part === 'silent-e' && (
              <span class="card half" aria-hidden="true">
                e
              </span>
            )}
            {part === 'whole' && <Card id={card.id} />}
          </li>
        ))}
      </ul>
      {irregular.map((card) => (
        <p key={card.letters[0]} class="irregular-said">
          {say.wordSheet.irregularPart(
            <b>{graphemeShown(card.grapheme)}</b>,
            card.phonemes.length === 0 ? say.wordSheet.isSilent : say.wordSheet.says(sound(card)),
          )}
        </p>
      ))}
      <p class="quiet">
        {syllables.map((syllable) => typed(word, syllable, syllables.length)).join(', ')}
      </p>
    </div>
  );
}

function typed(word: string, { from, to, type }: Syllable, count: number): string {
  const name = typeNames[type];
  if (count > 1) return `${word.slice(from, to)} ${name}`;
  return type === 'other' ? say.wordSheet.oneSyllableOfNo : say.wordSheet.oneSyllable(name);
}

function sounds(reading: Reading): string {
  return wordLabel(reading, accent.value, settings.value.notation);
}
