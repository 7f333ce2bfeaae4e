import { describe, expect, it } from 'vitest';
import { britishSpelling } from './british-spelling.ts';

/** Common knowledge, as any dictionary of either side prints it; SCOWL's lists were the wider check (docs/accents.md). */
const PAIRS = [
  ['color', 'colour'],
  ['colors', 'colours'],
  ['favorite', 'favourite'],
  ['neighborhood', 'neighbourhood'],
  ['center', 'centre'],
  ['theaters', 'theatres'],
  ['realize', 'realise'],
  ['organization', 'organisation'],
  ['emphasized', 'emphasised'],
  ['analyze', 'analyse'],
  ['traveled', 'travelled'],
  ['jeweler', 'jeweller'],
  ['defense', 'defence'],
  ['gray', 'grey'],
  ['plow', 'plough'],
] as const;

const SAME =
  'doctor finger size prize seize capsize maize resized sailor actor water meter spelled filed hotel mirror wheeled for or';

describe('British spelling', () => {
  it.each(PAIRS)('writes %s as %s', (american, british) => {
    expect(britishSpelling(american)).toBe(british);
    expect(britishSpelling(british)).toBeNull();
  });

  it.each(SAME.split(' '))('leaves %s', (word) => {
    expect(britishSpelling(word)).toBeNull();
  });
});
