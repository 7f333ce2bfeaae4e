import { type Correspondence, type Kind, makeId, type Place, type Tier } from './correspondence.ts';
import type { Phoneme } from './phonemes.ts';

/**
 * Where a row of the table applies. `before` and `after` test the letters to
 * its left and right; a row used where they fail is irregular there, or not
 * used at all when `only` is set. `also` lists sounds that the source
 * dictionary writes for the same thing (its AA and AO are mixed). `weak` is a
 * sound that the row accepts in an unstressed syllable, in the context given:
 * the dictionary's AH0 and IH0 are one vowel in most American speech. `inside`
 * lets a consonant-e card stand before these letters too.
 */
export interface RowContext {
  readonly before?: RegExp;
  readonly after?: RegExp;
  readonly only?: true;
  readonly inside?: RegExp;
  readonly also?: readonly string[];
  readonly weak?: { readonly sounds: string; readonly before?: RegExp; readonly after?: RegExp };
  readonly parts?: readonly string[];
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
export interface Row extends Correspondence {
  readonly context: RowContext;
  /** Every sound sequence the row accepts; the first is its own. */
  readonly accepts: readonly (readonly Phoneme[])[];
}

const placeNames: Readonly<Record<string, Place>> = { b: 'beginning', m: 'middle', e: 'ending' };

/** Turns a written row into a checked value. */
export function makeRow(spec: RowSpec): Row {
  const [grapheme, sounds, kind, tier, places, keyword, context = {}] = spec;
  const phonemes = soundsOf(sounds);
  return {
    id: makeId(grapheme, phonemes),
    grapheme,
    phonemes,
    kind,
    tier,
    places: [...places].map((letter) => placeNames[letter] as Place),
    keyword,
    parts: context.parts ?? [],
    context,
    accepts: [phonemes, ...(context.also ?? []).map(soundsOf)],
  };
}

function soundsOf(text: string): readonly Phoneme[] {
  return text === '' ? [] : (text.split(' ') as Phoneme[]);
}
