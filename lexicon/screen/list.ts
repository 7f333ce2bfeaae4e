import { type Phoneme, parseSounds } from '../../core/language/phonemes.ts';
import {
  SCREEN_CATEGORIES,
  SCREEN_SCOPES,
  type ScreenCategory,
  type ScreenScope,
} from '../../core/words/screen-format.ts';

/**
 * How grave a row is. `severe` stops and is also heard through a child's slips
 * (slips.ts); `stop` stops; `ask` asks. Words that were weighed and are fit for
 * class stand in cleared.tsv, which ships nothing.
 */
export const SEVERITIES = ['severe', 'stop', 'ask'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** One reviewed row of list.tsv. `sounds` is empty where only the spelling counts. */
export interface ScreenRow {
  readonly spelling: string;
  readonly sounds: readonly (readonly Phoneme[])[];
  readonly severity: Severity;
  readonly category: ScreenCategory;
  readonly scope: ScreenScope;
  readonly why: string;
}

/** A word that the screen would stop by its wider rules and that a reviewer found harmless. */
export interface HarmlessRow {
  readonly spelling: string;
  readonly sounds: readonly (readonly Phoneme[])[];
}

/**
 * Reads list.tsv: a heading line, then `spelling, sounds, severity, category,
 * scope, why`, separated by tabs; several pronunciations are separated by ` / `;
 * `-` stands for none. Lines that begin with # are notes. Throws with the line
 * number on anything else, for the list is ours.
 */
export function parseScreenList(text: string): readonly ScreenRow[] {
  return linesOf(text).map(([line, number]) => {
    const [spelling = '', sounds = '', severity = '', category = '', scope = '', why = ''] =
      line.split('\t');
    const row = {
      spelling,
      sounds: soundsOf(sounds, number),
      severity: oneOf(SEVERITIES, severity, number),
      category: oneOf(SCREEN_CATEGORIES, category, number),
      scope: oneOf(SCREEN_SCOPES, scope, number),
      why,
    };
    if (spelling === '' || why === '')
      throw new Error(`list.tsv, line ${number}: a part is missing`);
    return row;
  });
}

/** Reads harmless.tsv: a heading line, then `spelling, sounds`, as above. */
export function parseHarmlessList(text: string): readonly HarmlessRow[] {
  return linesOf(text).map(([line, number]) => {
    const [spelling = '', sounds = ''] = line.split('\t');
    return { spelling, sounds: soundsOf(sounds, number) };
  });
}

function linesOf(text: string): readonly (readonly [line: string, number: number])[] {
  return text
    .split('\n')
    .map((line, index) => [line, index + 1] as const)
    .filter(([line]) => line !== '' && !line.startsWith('#'))
    .slice(1);
}

function soundsOf(text: string, number: number): readonly (readonly Phoneme[])[] {
  if (text === '-') return [];
  return text.split(' / ').map((part) => {
    const sounds = parseSounds(part);
    if (!sounds) throw new Error(`line ${number}: "${part}" are no sounds`);
    return sounds;
  });
}

function oneOf<Name extends string>(names: readonly Name[], text: string, number: number): Name {
  const name = names.find((candidate) => candidate === text);
  if (!name) throw new Error(`line ${number}: "${text}" is none of ${names.join(', ')}`);
  return name;
}
