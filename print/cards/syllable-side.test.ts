import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import type { CardId } from '../../core/language/card-id.ts';
import { makeSyllableId } from '../../core/language/syllable-card.ts';
import { openTypeface } from '../typeface.ts';
import { ANDIKA } from '../typeface-files.ts';
import { letterRoom } from './front.ts';
import { frameAt, gridOf } from './grid.ts';
import { letterSizes } from './letter-size.ts';
import { paperCard } from './paper-card.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });

/** The syllable types of the trade, each by a syllable that shows it: common practice, no source. */
const KINDS: readonly (readonly [readonly CardId[], string, string, RegExp])[] = [
  [['n=N', 'a=AE', 'p=P'], 'nap', '/n/ /ă/ /p/', /^closed/],
  [['t=T', 'i=AY'], 'ti', '/t/ /ī/', /^open/],
  [['p=P', 'l=L', 'a_e=EY', 't=T'], 'plate', '/p/ /l/ /ā/ /t/', /^silent e/],
  [['p=P', 'l=L', 'ay=EY'], 'play', '/p/ /l/ /ā/', /^vowel team/],
  [['t=T', 'er=ER'], 'ter', '/t/ /er/', /^vowel with r/],
];

describe('the printed card of a syllable', () => {
  it.each(KINDS)('%j says its sounds and what kind it is', (cards, letters, sound, rule) => {
    const { parts, back } = paperCard(makeSyllableId(cards));
    expect(parts).toEqual([letters]);
    expect(back).toMatchObject({ letters, sound, rule: expect.stringMatching(rule) });
  });

  it('has letters of one size with all others of its set, long and short', () => {
    const set = KINDS.map(([cards]) => paperCard(makeSyllableId(cards)));
    const room = letterRoom(frameAt(gridOf('index', 'letter'), 0), false);
    const { of } = letterSizes(set, room, typeface);
    expect(new Set(set.map(of)).size).toBe(1);
  });
});
