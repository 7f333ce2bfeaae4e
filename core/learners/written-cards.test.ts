import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CORRESPONDENCES, correspondenceById } from '../language/correspondences.ts';
import { makeSounds } from '../language/phonemes.ts';
import { parseHeard, readCards } from './written-cards.ts';

describe('cards as they are written', () => {
  it.each([
    ['sh-i-p', 'SH IH P', ['sh=SH', 'i=IH', 'p=P']],
    ['sh-i-p', '', ['sh=SH', 'i=IH', 'p=P']],
    ['b-r-ea-d', 'B R EH D', ['b=B', 'r=R', 'ea=EH', 'd=D']],
    ['m-a_e-k', 'M EY K', ['m=M', 'a_e=EY', 'k=K']],
    ['qu-i-z', 'K W IH Z', ['qu=K+W', 'i=IH', 'z=Z']],
    ['l-a-m-b', 'L AE M', ['l=L', 'a=AE', 'm=M', 'b=-']],
    ['l-a-m-b=-', '', ['l=L', 'a=AE', 'm=M', 'b=-']],
    ['r-a-b.b-i-t', 'R AE B B IH T', ['r=R', 'a=AE', 'b=B', 'b=B', 'i=IH', 't=T']],
    ['m-y', '', ['m=M', 'y=AY']],
    ['SH', '', ['sh=SH']],
    ['was=sight', '', ['was=sight']],
    ['Was=Sight', 'W AA Z', ['was=sight']],
  ])('%s %s', (cards, sounds, ids) => {
    expect(readCards(cards, sounds)).toEqual({ ids });
  });

  it('are read back from any ids and their sounds', () => {
    const rows = CORRESPONDENCES.filter(({ kind }) => kind !== 'silent');
    fc.assert(
      fc.property(fc.array(fc.nat(rows.length - 1), { minLength: 1, maxLength: 5 }), (at) => {
        const cards = at.map((n) => rows[n] as (typeof rows)[number]);
        const sounds = makeSounds(cards.flatMap(({ phonemes }) => phonemes));
        const read = readCards(cards.map(({ grapheme }) => grapheme).join('-'), sounds);
        if (!('ids' in read)) throw new Error(read.message);
        const found = read.ids.map((id) => correspondenceById.get(id));
        expect(found.map((card) => card?.grapheme)).toEqual(cards.map(({ grapheme }) => grapheme));
        expect(makeSounds(found.flatMap((card) => card?.phonemes ?? []))).toBe(sounds);
      }),
    );
  });

  it.each([
    ['', '', 'no-cards', 'sh-i-p'],
    ['zq-o-p', '', 'unknown-card', 'zq'],
    ['sh-o-p', 'SH IH T', 'other-sounds', 'sh-o-p'],
    ['sh-o-p', 'SH1 OH', 'other-sounds', 'ARPABET'],
    ['ea=ZZ-t', '', 'unknown-card', 'ea=ZZ'],
  ])('say what is wrong: “%s” “%s”', (cards, sounds, code, hint) => {
    expect(readCards(cards, sounds)).toMatchObject({
      code,
      message: expect.stringContaining(hint),
    });
  });
});

it.each([
  ['EH', 'EH'],
  ['K W', 'K W'],
  ['e', 'EH'],
  ['sh', 'SH'],
  ['a long pause', 'a long pause'],
  [' ', null],
])('what was heard, “%s”, is %s', (written, heard) => {
  expect(parseHeard(written)).toBe(heard);
});
