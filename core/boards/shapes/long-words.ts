/** The longer words that a group can read, as syllable cards. */
import { type CardId, graphemeOf } from '../../language/card-id.ts';
import type { SyllableType } from '../../language/reading.ts';
import { soundsOnCard } from '../../language/syllable-card.ts';
import type { Taught } from '../../language/taught.ts';
import { decodableWords } from '../../words/decodable.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import type { WordScreen } from '../../words/screen.ts';
import { laySyllables } from './lay-syllables.ts';

/** A longer word: its place in the word list, its syllable cards and their types. */
export interface LongWord {
  readonly index: number;
  readonly word: string;
  readonly syllables: readonly CardId[];
  readonly types: readonly SyllableType[];
}

/** The rarest band whose words are looked for on a board. */
const RAREST = 6;

const known = new WeakMap<WordScreen, WeakMap<Taught, Map<number, readonly LongWord[]>>>();

/**
 * The words of so many syllables that a group can read card by card and that the screen clears, with all
 * their syllables, commonest first. Some thousand
 * readings are laid the first time that it is asked for what was taught; after that they are remembered.
 */
export function longWords(
  taught: Taught,
  beats: number,
  lexicon: Lexicon,
  screen: WordScreen,
): readonly LongWord[] {
  const byTaught = known.get(screen) ?? new WeakMap();
  const byBeats = byTaught.get(taught) ?? new Map<number, readonly LongWord[]>();
  const before = byBeats.get(beats);
  if (before) return before;
  const found = findWords(taught, beats, lexicon, screen);
  byBeats.set(beats, found);
  byTaught.set(taught, byBeats);
  known.set(screen, byTaught);
  return found;
}

function findWords(
  taught: Taught,
  beats: number,
  lexicon: Lexicon,
  screen: WordScreen,
): readonly LongWord[] {
  const clear = clearSyllables(screen);
  const found: LongWord[] = [];
  for (const index of decodableWords(lexicon, taught)) {
    if (lexicon.band(index) > RAREST) break;
    if (lexicon.syllableCount(index) !== beats) continue;
    const word = lexicon.word(index);
    if (taught.irregularWords.has(word)) continue;
    const [reading] = lexicon.readings(index);
    const syllables = reading && laySyllables(reading);
    if (!syllables?.every(clear)) continue;
    if (screen.judge(word, reading?.sounds ?? []).verdict !== 'clear') continue;
    found.push({
      index,
      word,
      syllables,
      types: (reading?.syllables ?? []).map(({ type }) => type),
    });
  }
  return found;
}

/** Whether a syllable may lie on the table by itself; each is asked for once. */
function clearSyllables(screen: WordScreen): (id: CardId) => boolean {
  const known = new Map<CardId, boolean>();
  return (id) => {
    const before = known.get(id);
    if (before !== undefined) return before;
    const clear = screen.judge(graphemeOf(id), soundsOnCard(id)).verdict === 'clear';
    known.set(id, clear);
    return clear;
  };
}
