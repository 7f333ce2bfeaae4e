import { parseCardId } from '../language/card-id.ts';
import { correspondencesByGrapheme } from '../language/correspondences.ts';
import { makeSounds, type Phoneme, parseSounds } from '../language/phonemes.ts';
import type { ScreenVerdict, WordScreen } from './screen.ts';

/** Cards as a person writes them, what they spell and what they say. */
export interface CardLine {
  readonly cards: string;
  readonly word: string;
  readonly sounds: readonly Phoneme[];
}

/** Why a line could not be read; `message` says what to do, `card` names the card at fault. */
export interface CardLineError {
  readonly code: 'no-cards' | 'unknown-card' | 'unknown-sounds';
  readonly message: string;
  readonly card: string | null;
  readonly nearMisses: readonly string[];
}

/** The judgment of a line; `sounds` as CMUdict writes them, without stress. */
export interface ScreenedLine {
  readonly cards: string;
  readonly sounds: string;
  readonly verdict: ScreenVerdict;
  readonly category: string | null;
  readonly reason: string | null;
}

/** Judges one line of text; see `parseScreenLine` for its form. */
export function screenLine(
  screen: WordScreen,
  line: string,
): ScreenedLine | { readonly error: CardLineError } {
  const parsed = parseScreenLine(line);
  if ('error' in parsed) return parsed;
  const { cards, word, sounds } = parsed.line;
  return { cards, sounds: makeSounds(sounds), ...screen.judge(word, sounds) };
}

/**
 * Reads `cards<TAB>sounds`: cards joined by `-`, syllables by `.`, a card as
 * letters (`sh`), as a split (`a_e`) or with its sounds (`ea=EH`). Without the
 * second column each card says its usual sound, the first that is taught; y
 * inside or at the end of a word is a vowel. With sounds given, cards may be
 * any letters, for only their spelling counts.
 */
export function parseScreenLine(
  line: string,
): { readonly line: CardLine } | { readonly error: CardLineError } {
  const [left = '', right = ''] = line.replace(/\r$/, '').split('\t');
  const cards = left.trim();
  const syllables = cards
    .split('.')
    .map((part) => part.split('-').filter((card) => card !== ''))
    .filter((part) => part.length > 0);
  if (syllables.length === 0) {
    return problem('no-cards', 'There are no cards on this line. Write them as sh-i-p.');
  }
  const odd = syllables.flat().find((card) => !/^[a-z']+(_e)?(=[A-Z+]+)?$/i.test(card));
  if (odd !== undefined) return unknownCard(odd);
  const word = syllables.map(spellingOf).join('');
  if (right.trim() !== '') {
    const sounds = parseSounds(right);
    if (sounds) return { line: { cards, word, sounds } };
    const message = `“${right.trim()}” are no sounds. Write ARPABET symbols such as SH IH P.`;
    return problem('unknown-sounds', message);
  }
  const flat = syllables.flat();
  const sounds: Phoneme[] = [];
  for (const [place, card] of flat.entries()) {
    const said = usualSounds(card.toLowerCase(), place, flat);
    if (!said) return unknownCard(card);
    sounds.push(...said);
  }
  return { line: { cards, word, sounds } };
}

/** Letters of a syllable; the e of a split card stands after the consonants, before an ending. */
function spellingOf(cards: readonly string[]): string {
  const graphemes = cards.map((card) => card.toLowerCase().split('=')[0] as string);
  const split = graphemes.findIndex((grapheme) => grapheme.endsWith('_e'));
  if (split < 0) return graphemes.join('');
  const tail = graphemes.slice(split + 1);
  const ending =
    tail.length > 1 && endings.has(tail.at(-1) as string) ? (tail.pop() as string) : '';
  const head = graphemes.slice(0, split).join('') + (graphemes[split] as string).slice(0, -2);
  return `${head}${tail.join('')}${ending.startsWith('e') ? '' : 'e'}${ending}`;
}

const endings: ReadonlySet<string> = new Set(['s', 'd', 'r', 'ed', 'es', 'er']);

function usualSounds(
  card: string,
  place: number,
  all: readonly string[],
): readonly Phoneme[] | null {
  const id = card.includes('=')
    ? parseCardId(card.replace(/=.*/, (sign) => sign.toUpperCase()))
    : null;
  if (id) return id.phonemes;
  if (card === 'y' && place > 0) return all.slice(0, place).some(hasVowel) ? ['IY'] : ['AY'];
  return correspondencesByGrapheme.get(card)?.[0]?.phonemes ?? null;
}

function hasVowel(card: string): boolean {
  return /^[aeiou]/i.test(card);
}

function unknownCard(card: string): { readonly error: CardLineError } {
  const near = [...correspondencesByGrapheme.keys()]
    .filter((known) => isOneEditApart(card.toLowerCase(), known))
    .slice(0, 3);
  const hint =
    near.length > 0 ? ` Did you mean ${near.join(', ')}?` : ' Give its sounds in a second column.';
  return problem('unknown-card', `There is no card “${card}”.${hint}`, card, near);
}

/** Whether one letter added, lost or changed makes one text the other. */
function isOneEditApart(left: string, right: string): boolean {
  if (Math.abs(left.length - right.length) > 1) return false;
  let head = 0;
  while (head < left.length && left[head] === right[head]) head += 1;
  const rest = (text: string, skipped: number) => text.slice(head + skipped);
  return (
    rest(left, 1) === rest(right, 1) ||
    rest(left, 1) === rest(right, 0) ||
    rest(left, 0) === rest(right, 1)
  );
}

function problem(
  code: CardLineError['code'],
  message: string,
  card: string | null = null,
  nearMisses: readonly string[] = [],
): { readonly error: CardLineError } {
  return { error: { code, message, card, nearMisses } };
}
