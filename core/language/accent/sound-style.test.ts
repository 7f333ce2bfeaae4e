import { describe, expect, it } from 'vitest';
import { type Phoneme, soundLabel } from '../phonemes.ts';
import type { Accent } from './accent.ts';
import { soundStyleFor } from './sound-style.ts';

const written = (accent: Accent, sounds: string, grapheme?: string) =>
  soundLabel(sounds.split(' ') as Phoneme[], soundStyleFor(accent, 'classroom'), grapheme);

describe('sounds on a card', () => {
  it.each([
    [['southern-british'], 'AA', 'o', '/o/'],
    [['southern-british'], 'AA', 'al', '/ar/'],
    [['southern-british'], 'AA R', 'ar', '/ar/'],
    [['southern-british'], 'AO R', 'ore', '/or/'],
    [['southern-british'], 'ER', 'ir', '/ur/'],
    [['southern-british'], 'EH R', 'air', '/air/'],
    [['southern-british'], 'EY', 'a_e', '/ai/'],
    [['southern-british'], 'SH', 'sh', '/sh/'],
    [['southern-british'], 'R', 'r', '/r/'],
    [['wh-apart'], 'W', 'wh', '/hw/'],
    [['wh-apart'], 'W', 'w', '/w/'],
    [['cot-caught'], 'AO', 'aw', '/ŏ/'],
    [['cot-caught'], 'AO R', 'or', '/or/'],
    [['pin-pen'], 'EH', 'e', '/ĕ/'],
  ] as const)('of a class with %j: %s of %s is %s', (accent, sounds, grapheme, label) => {
    expect(written(accent, sounds, grapheme)).toBe(label);
  });

  it('are in IPA as England’s National Curriculum prints them', () => {
    const ipa = (sounds: readonly Phoneme[]) =>
      soundLabel(sounds, soundStyleFor(['southern-british'], 'ipa'));
    expect(ipa(['AO', 'R'])).toBe('/ɔː/');
    expect(ipa(['OW'])).toBe('/əʊ/');
    expect(ipa(['ER'])).toBe('/ɜː/');
    expect(ipa(['IH', 'R'])).toBe('/ɪə/');
  });
});
