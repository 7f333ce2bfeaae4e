import { guessReading } from '../language/guess.ts';
import type { Phoneme } from '../language/phonemes.ts';
import type { Lexicon } from './lexicon.ts';
import type { FirstName } from './teacher-rules.ts';

/**
 * Children's first names with every way each may be said: as the word list says
 * it, else a guess from its letters, since a board that says *Nate* with other
 * letters surprises as much. Only names of one syllable are guessed; a guess at
 * a longer one is too often wrong. A name of unknown sounds is known by its
 * letters alone.
 */
export function soundedNames(names: readonly string[], lexicon: Lexicon): readonly FirstName[] {
  return names.flatMap((name): readonly FirstName[] => {
    const ways = waysToSay(name.trim().toLowerCase(), lexicon);
    return ways.length === 0 ? [{ name, sounds: null }] : ways.map((sounds) => ({ name, sounds }));
  });
}

function waysToSay(name: string, lexicon: Lexicon): readonly (readonly Phoneme[])[] {
  const index = lexicon.indexOf(name);
  if (index >= 0) return lexicon.readings(index).map(({ sounds }) => sounds);
  const guess = /^[a-z]+$/.test(name) ? guessReading(name) : null;
  return guess && guess.syllables.length === 1 ? [guess.sounds] : [];
}

/** The longest name that is kept, in letters; more than a first name is never asked. */
const LONGEST = 40;

/** A name without signs that nobody sees: control signs and marks of direction; spaces are single. */
export function plainName(text: string): string {
  return text.trim().replace(/\s+/g, ' ').replace(HIDDEN, '');
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the signs to take out.
const HIDDEN = /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g;

/**
 * Names from what was typed or pasted: one to a line, or parted by commas,
 * semicolons or the cells of a spreadsheet. A name that stands there twice is
 * that of two children.
 */
export function parseNames(text: string): readonly string[] {
  return text.split(/[\n\r,;\t]+/).flatMap((part) => {
    const name = plainName(part).slice(0, LONGEST).trim();
    return /\p{L}/u.test(name) ? [name] : [];
  });
}
