/**
 * Lays a row of cards as a word, by the form of its shape: which cards make
 * which syllable, what it spells and says, and which correspondences read it.
 */
import { type Correspondence, isVowelCard } from '../../language/correspondence.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import {
  type LaidSyllable,
  laySyllable,
  partsOf,
  soundsOf,
  spellingOf,
} from '../../language/laid-syllable.ts';
import type { Phoneme } from '../../language/phonemes.ts';
import type { Shape, WordForm } from './shapes.ts';

/** A word as its cards lie on the table. */
export interface LaidWord {
  readonly form: WordForm;
  /** The syllables that the spelling rules read; a consonant-le or an ending is none. */
  readonly syllables: readonly LaidSyllable[];
  /** The consonants between two syllables on one card: bb, nd. */
  readonly bridge: Correspondence | null;
  /** An ending, or consonant-le. */
  readonly suffix: Correspondence | null;
  /** All correspondences in order, cluster cards opened. */
  readonly parts: readonly Correspondence[];
  readonly letters: string;
  readonly sounds: readonly Phoneme[];
}

/** Lays cards in the piles of a shape; null when they make no such word. */
export function layWord(shape: Shape, cards: readonly Correspondence[]): LaidWord | null {
  const { form, piles } = shape;
  const at = (role: string, from = 0): number =>
    piles.findIndex((pile, place) => place >= from && pile.role === role);
  if (form === 'one') return plain(cards);
  if (form === 'two') {
    const second = at('beginning', at('vowel'));
    const first = laySyllable(cards.slice(0, second));
    const last = laySyllable(cards.slice(second));
    if (!first || !last) return null;
    return joined(form, cards, [
      { ...first, closes: false },
      { ...last, opens: false },
    ]);
  }
  if (form === 'ending') {
    const suffix = cards.at(-1) as Correspondence;
    const base = laySyllable(cards.slice(0, -1));
    return base && { ...joined(form, cards, [base]), suffix };
  }
  const vowel = at('vowel');
  const bridge = cards[at('bridge')] as Correspondence;
  const [closing, opening] = [closingPart(bridge), openingPart(bridge)];
  if (form === 'doubled') {
    const first = laySyllable([...cards.slice(0, vowel + 1), closing]);
    const last = laySyllable([opening, ...cards.slice(at('bridge') + 1)]);
    if (!first || !last) return null;
    const syllables = [
      { ...first, closes: false },
      { ...last, opens: false },
    ];
    return { ...joined(form, cards, syllables), bridge };
  }
  const isShort = cards[vowel]?.kind === 'short-vowel';
  const first = laySyllable([...cards.slice(0, vowel + 1), ...(isShort ? [closing] : [])]);
  if (!first) return null;
  const suffix = cards.at(-1) as Correspondence;
  return { ...joined(form, cards, [{ ...first, closes: false }]), bridge, suffix };
}

/** A word of one syllable from cards in any piles. */
export function plain(cards: readonly Correspondence[]): LaidWord | null {
  const syllable = laySyllable(cards);
  if (!syllable) return null;
  return {
    form: 'one',
    syllables: [syllable],
    bridge: null,
    suffix: null,
    parts: cards.flatMap(partsOf),
    letters: spellingOf(syllable),
    sounds: soundsOf(syllable),
  };
}

/** The place among the parts of the second syllable's vowel; -1 without one. */
export function secondVowel({ parts, syllables }: LaidWord): number {
  return syllables.length < 2 ? -1 : parts.findLastIndex(isVowelCard);
}

function joined(
  form: WordForm,
  cards: readonly Correspondence[],
  syllables: readonly LaidSyllable[],
): LaidWord {
  const parts = cards.flatMap(partsOf);
  return {
    form,
    syllables,
    bridge: null,
    suffix: null,
    parts,
    letters: cards.map(({ grapheme }) => grapheme).join(''),
    sounds: parts.flatMap(({ phonemes }) => phonemes),
  };
}

/** What of a bridge closes the first syllable: the b of bb, the n of nd, the k of ck. */
function closingPart(bridge: Correspondence): Correspondence {
  return partsOf(singleOf(bridge))[0] as Correspondence;
}

/** What of it opens the second. */
function openingPart(bridge: Correspondence): Correspondence {
  return partsOf(singleOf(bridge)).at(-1) as Correspondence;
}

function singleOf(bridge: Correspondence): Correspondence {
  const letter = bridge.id === 'ck=K' ? 'k' : (bridge.grapheme[0] as string);
  const single = correspondenceById.get(`${letter}=${bridge.phonemes.join('+')}`);
  return bridge.parts.length === 0 && single ? single : bridge;
}
