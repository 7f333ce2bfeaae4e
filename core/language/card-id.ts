import { asWritten } from './as-written.ts';
import { isPhoneme, type Phoneme } from './phonemes.ts';

/**
 * A card by its name: its letters, a sign, its sounds. `sh=SH`, `qu=K+W`, `a_e=EY` for a split one,
 * `b=-` for a silent one, and `xy=?K+S` for letters of a word that no row of the table explains. A word
 * known by sight is a card as well, read at once like any other: `was=sight`. It is plain text, so that
 * it can be stored and sent; what it says is read here and nowhere else. A version that knows no words by
 * sight sees a card that it does not know, whose letters are the word.
 */
export type CardId = `${string}=${string}`;

/** The letters of a card as the tables write them: `sh`, `a_e`. */
export function graphemeOf(id: CardId): string {
  return id.slice(0, id.indexOf('='));
}

/** The letters of a card as people read them, the place of a missing consonant as a dash: `sh`, `a–e`; a word as it is written: `I`. */
export function lettersShown(id: CardId): string {
  const letters = graphemeOf(id);
  return isSightId(id) ? asWritten(letters) : graphemeShown(letters);
}

/** Letters as people read them: `a–e` for `a_e`. */
export function graphemeShown(grapheme: string): string {
  return grapheme.replace('_', '–');
}

/** The sounds of a card in their order; none of a silent one, and none of a word known by sight. */
export function soundsOf(id: CardId): readonly Phoneme[] {
  const sounds = id.slice(id.indexOf('=') + 1).replace('?', '');
  if (sounds === BY_SIGHT) return [];
  return sounds === '' || sounds === '-' ? [] : (sounds.split('+') as Phoneme[]);
}

/** Whether a text is written as a card's name is; whether there is such a card the tables tell. */
export function isCardId(text: string): text is CardId {
  return text.includes('=');
}

/** The name of a card with these letters and sounds: `sh=SH`, `qu=K+W`, silent `b=-`. */
export function makeCardId(grapheme: string, phonemes: readonly Phoneme[]): CardId {
  return `${grapheme}=${phonemes.length === 0 ? '-' : phonemes.join('+')}`;
}

/** The name of letters that no row of the table explains where they have these sounds: `xy=?K+S`. */
export function makeGuessedId(letters: string, phonemes: readonly Phoneme[]): CardId {
  return `${letters}=?${phonemes.join('+')}`;
}

/** What stands in place of sounds where a word is known by sight. */
const BY_SIGHT = 'sight';

/** The name of a word known by sight, by its spelling: `was=sight`. */
export function makeSightId(word: string): CardId {
  return `${word}=${BY_SIGHT}`;
}

/** Whether a card is a word known by sight. */
export function isSightId(id: string): boolean {
  return id.endsWith(`=${BY_SIGHT}`);
}

/** Reads `ea=EH`, `qu=K+W`, `b=-`; null when it is not of that form. */
export function parseCardId(
  text: string,
): { readonly grapheme: string; readonly phonemes: readonly Phoneme[] } | null {
  const match = /^([a-z']+(?:_e)?)=([A-Z+]+|-)$/.exec(text);
  if (!match) return null;
  const [, grapheme, sounds] = match as unknown as [string, string, string];
  const symbols = sounds === '-' ? [] : sounds.split('+');
  if (!symbols.every(isPhoneme)) return null;
  return { grapheme, phonemes: symbols as Phoneme[] };
}
