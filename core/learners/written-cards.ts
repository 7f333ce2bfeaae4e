import { type CardId, graphemeOf, isSightId, makeSightId } from '../language/card-id.ts';
import { type Correspondence, isVowelCard } from '../language/correspondence.ts';
import { correspondencesByGrapheme } from '../language/correspondences.ts';
import { type Phoneme, parseSounds } from '../language/phonemes.ts';
import { nearMisses } from '../sequence/near-misses.ts';

/** Why cards could not be read; `message` says what to do. */
export interface CardsError {
  readonly code: 'no-cards' | 'unknown-card' | 'other-sounds';
  readonly message: string;
}

/**
 * Card ids from what a person wrote: `sh-i-p` with the word's sounds `SH IH P`.
 * A card is its letters or an id (`ea=EH`), cards are joined by `-`, syllables
 * by `-` or `.`. The sounds tell which of its sounds a card has here; without
 * them each has its usual one, and a y after other cards is a vowel. A word known by sight stands alone,
 * as `was=sight`.
 */
export function readCards(
  written: string,
  sounds: string,
): { readonly ids: readonly CardId[] } | CardsError {
  const cards = written
    .split(/(?<!=)-|[.]/)
    .map((card) => card.trim())
    .filter((card) => card !== '');
  if (cards.length === 0) {
    return { code: 'no-cards', message: 'There are no cards. Write them as sh-i-p.' };
  }
  const [only] = cards;
  if (cards.length === 1 && only !== undefined && isSightId(only.toLowerCase())) {
    return { ids: [makeSightId(graphemeOf(only.toLowerCase() as CardId))] };
  }
  const choices: (readonly Correspondence[])[] = [];
  for (const [at, card] of cards.entries()) {
    const found = choicesFor(card, at);
    if (found.length === 0) return unknownCard(card);
    choices.push(found);
  }
  if (sounds.trim() === '') return { ids: choices.map(([usual]) => (usual as Correspondence).id) };
  const said = parseSounds(sounds);
  if (said === null) {
    const message = `“${sounds}” are no sounds. Write ARPABET symbols such as SH IH P.`;
    return { code: 'other-sounds', message };
  }
  const ids = idsSaying(choices, said);
  if (ids !== null) return { ids };
  const message = `The cards ${written} do not say ${sounds}. Mend one of the two.`;
  return { code: 'other-sounds', message };
}

/** What was heard: sounds as ARPABET, else the usual sounds of the letters, else as it was written. */
export function parseHeard(written: string): string | null {
  const text = written.trim();
  if (text === '') return null;
  const sounds = text === text.toUpperCase() ? parseSounds(text) : null;
  const usual = correspondencesByGrapheme.get(text.toLowerCase())?.[0];
  const said = sounds ?? (usual && usual.phonemes.length > 0 ? usual.phonemes : null);
  return said === null ? text : said.join(' ');
}

function choicesFor(card: string, at: number): readonly Correspondence[] {
  const [letters = '', sound] = card.split('=');
  const grapheme = letters.toLowerCase();
  const all = correspondencesByGrapheme.get(grapheme) ?? [];
  if (sound !== undefined)
    return all.filter(({ id }) => id === `${grapheme}=${sound.toUpperCase()}`);
  if (grapheme !== 'y' || at === 0) return all;
  return [...all].sort((one, other) => Number(isVowelCard(other)) - Number(isVowelCard(one)));
}

/** The first choice of cards whose sounds are these, tried in the order of the choices. */
function idsSaying(
  choices: readonly (readonly Correspondence[])[],
  sounds: readonly Phoneme[],
): readonly CardId[] | null {
  const dead = new Set<string>();
  const from = (card: number, at: number): readonly CardId[] | null => {
    if (card === choices.length) return at === sounds.length ? [] : null;
    const key = `${card} ${at}`;
    if (dead.has(key)) return null;
    for (const { id, phonemes } of choices[card] ?? []) {
      if (!phonemes.every((phoneme, n) => isSame(phoneme, sounds[at + n]))) continue;
      const rest = from(card + 1, at + phonemes.length);
      if (rest !== null) return [id, ...rest];
    }
    dead.add(key);
    return null;
  };
  return from(0, 0);
}

/** CMUdict without stress writes the schwa as the vowel of *cup*. */
function isSame(one: Phoneme, other: Phoneme | undefined): boolean {
  const plain = (phoneme: Phoneme | undefined) => (phoneme === 'AX' ? 'AH' : phoneme);
  return plain(one) === plain(other);
}

function unknownCard(card: string): CardsError {
  const near = nearMisses(card).filter((form) => !form.includes(':'));
  const hint = near.length === 0 ? '' : ` Did you mean ${near.join(', ')}?`;
  return { code: 'unknown-card', message: `There is no card “${card}”.${hint}` };
}
