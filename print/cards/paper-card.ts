import { type CardId, graphemeOf, isSightId, lettersShown } from '../../core/language/card-id.ts';
import { cardRule } from '../../core/language/card-rule.ts';
import { type CardShape, cardShape } from '../../core/language/card-shape.ts';
import { isVowelCard, type Place } from '../../core/language/correspondence.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { type Phoneme, soundLabel } from '../../core/language/phonemes.ts';
import { isSyllableId } from '../../core/language/syllable-card.ts';
import type { SightPart } from '../../core/words/sight-parts.ts';
import { syllableSide } from './syllable-side.ts';

/** A card as it is printed. */
export interface PaperCard {
  readonly shape: CardShape;
  /** The letters, in the parts that the card tells apart: `['s', 't']` of a cluster, `['a', 'e']` of a_e. */
  readonly parts: readonly string[];
  readonly keyword: string | null;
  /** What her side says; null for a card of her own. */
  readonly back: CardBack | null;
  /** Whether the card is a syllable of a longer word; the syllables of a set have one size. */
  readonly isSyllable?: true;
}

/** The teacher's side, in her words. */
export interface CardBack {
  readonly letters: string;
  readonly sound: string;
  readonly keyword: string | null;
  readonly place: string;
  readonly rule: string | null;
  /** Words that show it, of what was taught; none where nobody was asked for them. */
  readonly words?: readonly string[];
  /** The step of the order that teaches it, where it has one. */
  readonly step?: number | null;
  /** Of a word known by sight, what is learned by heart; null where nothing is. */
  readonly byHeart?: string | null;
}

/** The printed card of a correspondence; of one that is not known here, its letters, and on the back that it is so. */
export function paperCard(id: CardId): PaperCard {
  if (isSightId(id)) return sightCard(id, []);
  if (isSyllableId(id)) return syllableCard(id, soundLabel);
  const card = correspondenceById.get(id);
  if (!card) {
    const letters = lettersShown(id);
    const back = { letters, sound: 'not known here', keyword: null, place: '', rule: null };
    return { shape: 'tile', parts: [letters], keyword: null, back };
  }
  const { grapheme, phonemes, kind, keyword, places } = card;
  const shape = cardShape(card);
  const ofParts = card.parts.map((part) => correspondenceById.get(part));
  const sound =
    kind === 'cluster'
      ? ofParts.map((part) => soundLabel(part?.phonemes ?? [])).join(' ')
      : soundLabel(phonemes);
  const letters = grapheme.replace('_e', '–e');
  const place = placeOf(shape, places, isVowelCard(card));
  return {
    shape,
    parts: partsOf(shape, grapheme, card.parts),
    keyword,
    back: { letters, sound, keyword, place, rule: cardRule(card) },
  };
}

/** The printed card of a word known by sight, and on its back which of its letters are learned by heart. */
export function sightCard(id: CardId, parts: readonly SightPart[]): PaperCard {
  const word = lettersShown(id);
  const learned = parts.filter(({ byHeart }) => byHeart).map(({ letters }) => letters);
  const ruled = parts.filter(({ byHeart }) => !byHeart).map(({ letters }) => letters);
  const rule =
    ruled.length === 0 ? 'all of it' : `${learned.join(', ')}; by rule: ${ruled.join(', ')}`;
  return {
    shape: 'slip',
    parts: [word],
    keyword: null,
    back: {
      letters: word,
      sound: 'known by sight',
      keyword: null,
      place: '',
      rule: null,
      byHeart: learned.length === 0 ? null : rule,
    },
  };
}

/** The printed card of a syllable, its sounds on the back as `said` writes them. */
function syllableCard(id: CardId, said: (sounds: readonly Phoneme[]) => string): PaperCard {
  const letters = lettersShown(id);
  const back = { letters, keyword: null, ...syllableSide(id, said) };
  return { shape: 'tile', parts: [letters], keyword: null, back, isSyllable: true };
}

/** A card with her own text; with none it is blank, to be written on. */
export function ownCard(text: string): PaperCard {
  return { shape: 'tile', parts: text === '' ? [] : [text], keyword: null, back: null };
}

function partsOf(shape: CardShape, grapheme: string, parts: readonly CardId[]): readonly string[] {
  if (shape === 'cluster') return parts.map(graphemeOf);
  if (shape === 'split') return [grapheme.slice(0, 1), 'e'];
  if (shape === 'carrier') return [grapheme.slice(0, -1), 'e'];
  return [grapheme];
}

const placeWords: Readonly<Record<Place, string>> = {
  beginning: 'at the beginning',
  middle: 'in the middle',
  ending: 'at the end',
};

function placeOf(shape: CardShape, places: readonly Place[], isVowel: boolean): string {
  if (shape === 'split') return 'around a consonant';
  if (shape === 'ending' || shape === 'cle') return 'at the end of longer words';
  if (places.length === 0 && !isVowel) return 'inside longer words';
  if (isVowel) return 'in the middle pile, with the vowels';
  return places.map((place) => placeWords[place]).join(' and ');
}

/** What a class adds to the backs of its cards. */
export interface Told {
  /** Sounds as they are written for her, by the letters that spell them. */
  readonly said: (sounds: readonly Phoneme[], grapheme?: string) => string;
  /** Words that show a card. */
  readonly words: (id: CardId) => readonly string[];
  /** The step that teaches a card; null where none does. */
  readonly step: (id: CardId) => number | null;
}

/** The printed card of a correspondence with all that a class adds to its back. */
export function toldCard(id: CardId, { said, words, step }: Told): PaperCard {
  if (isSyllableId(id)) return syllableCard(id, (sounds) => said(sounds));
  const card = paperCard(id);
  const known = correspondenceById.get(id);
  if (!card.back || !known) return card;
  const sound =
    known.kind === 'cluster'
      ? known.parts.map((part) => said(correspondenceById.get(part)?.phonemes ?? [])).join(' ')
      : said(known.phonemes, known.grapheme);
  return { ...card, back: { ...card.back, sound, words: words(id), step: step(id) } };
}
