import type { PileRole, Shape } from './shapes.ts';

const names: Readonly<Record<PileRole, string>> = {
  beginning: 'Beginnings',
  vowel: 'Vowels',
  ending: 'Endings',
  bridge: 'Between',
  suffix: 'Added',
  syllable: 'Syllables',
};

const beatNames: Readonly<Record<string, readonly string[]>> = {
  affixes: ['Prefixes', 'Bases', 'Suffixes'],
  prefixed: ['Prefixes', 'Bases'],
  suffixed: ['Bases', 'Suffixes'],
};

const ordinals = ['1st', '2nd', '3rd'];

/** The names of a shape's piles, left to right, each once: `1st vowels`, `2nd vowels`. */
export function pileNames({ id, form, piles }: Shape): readonly string[] {
  if (form === 'beats') return beatNames[id] ?? ['First syllables', 'Second syllables'];
  return piles.map(({ role }, at) => {
    const name = names[role];
    if (piles.filter((other) => other.role === role).length === 1) return name;
    const before = piles.slice(0, at).filter((other) => other.role === role).length;
    return `${ordinals[before]} ${name.toLowerCase()}`;
  });
}

/** A pile in the middle of a sentence: `the beginnings`. */
export function pileInWords(shape: Shape, pile: number): string {
  return `the ${(pileNames(shape)[pile] ?? '').toLowerCase()}`;
}
