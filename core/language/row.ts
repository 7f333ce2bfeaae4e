import { type CardId, makeCardId } from './card-id.ts';
import type { Correspondence, Kind, Place, Tier } from './correspondence.ts';
import type { Phoneme } from './phonemes.ts';

/**
 * Where a row of the table applies. `before` and `after` test the letters to
 * its left and right; a row used where they fail is irregular there, or not
 * used at all when `only` is set. `inside` lets a consonant-e card stand before
 * these letters too. `also` lists sounds that the source dictionary writes for
 * the same thing (its AA and AO are mixed); `variants` are such sounds that
 * hold only in a context.
 */
export interface RowContext {
  readonly before?: RegExp;
  readonly after?: RegExp;
  readonly only?: true;
  readonly inside?: RegExp;
  readonly also?: readonly string[];
  readonly variants?: readonly Variant[];
  readonly parts?: readonly CardId[];
}

/**
 * Another sound for the same card: in an unstressed syllable, where CMUdict's
 * AH0 and IH0 are one vowel in most American speech, or beside these letters.
 */
export interface Variant {
  readonly sounds: string;
  readonly unstressed?: true;
  readonly before?: RegExp;
  readonly after?: RegExp;
}

/** `b`, `m`, `e`: may stand at a short word's beginning, middle, ending. */
export type PlaceLetters = 'b' | 'm' | 'e' | 'be' | '';

/** One row as it is written in the tables: grapheme, sounds, kind, tier, places, keyword, context. */
export type RowSpec = readonly [
  grapheme: string,
  sounds: string,
  kind: Kind,
  tier: Tier,
  places: PlaceLetters,
  keyword: string | null,
  context?: RowContext,
];

/** A correspondence with the context that the aligner checks. */
export interface TableRow extends Correspondence {
  readonly context: RowContext;
  /** Every sound sequence the row accepts, longest first. */
  readonly accepts: readonly (readonly Phoneme[])[];
  readonly variants: readonly (Variant & { readonly phonemes: readonly Phoneme[] })[];
}

const placeNames: Readonly<Record<string, Place>> = { b: 'beginning', m: 'middle', e: 'ending' };

/** Turns a written row into a checked value. */
export function makeRow(spec: RowSpec): TableRow {
  const [grapheme, sounds, kind, tier, places, keyword, context = {}] = spec;
  const phonemes = soundsOf(sounds);
  return {
    id: makeCardId(grapheme, phonemes),
    grapheme,
    phonemes,
    kind,
    tier,
    places: [...places].map((letter) => placeNames[letter] as Place),
    keyword,
    parts: context.parts ?? [],
    context,
    accepts: [phonemes, ...(context.also ?? []).map(soundsOf)].sort((a, b) => b.length - a.length),
    variants: (context.variants ?? []).map((variant) => ({
      ...variant,
      phonemes: soundsOf(variant.sounds),
    })),
  };
}

function soundsOf(text: string): readonly Phoneme[] {
  return text === '' ? [] : (text.split(' ') as Phoneme[]);
}
