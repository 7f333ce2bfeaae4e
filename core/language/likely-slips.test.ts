import { describe, expect, it } from 'vitest';
import { readFixture } from '../../test/fixture.ts';
import { type CardId, soundsOf } from './card-id.ts';
import { CORRESPONDENCES } from './correspondences.ts';
import { type Asked, type LikelySlip, likelySlips, WORD_SLIPS } from './likely-slips.ts';
import type { Phoneme } from './phonemes.ts';

const askedEveryWay: readonly Asked[] = ['visual', 'auditory', 'blending'];

function said(id: CardId, asked: Asked): readonly string[] {
  return likelySlips(id, asked).map(named);
}

function named(slip: LikelySlip): string {
  if (slip.kind === 'phoneme') return slip.sound;
  return slip.kind === 'letter' ? slip.card : slip.kind;
}

describe('likely slips', () => {
  it('are nine at most for any card, none twice, something else last', () => {
    for (const { id } of CORRESPONDENCES) {
      for (const asked of askedEveryWay) {
        const slips = said(id, asked);
        expect(slips.length, id).toBeLessThanOrEqual(9);
        expect(slips.length, id).toBeGreaterThanOrEqual(2);
        expect(new Set(slips).size, id).toBe(slips.length);
        expect(slips.at(-1)).toBe('other');
      }
    }
    expect(WORD_SLIPS.at(-1)?.kind).toBe('other');
  });

  it('never offer the sound that is right', () => {
    for (const { id, phonemes } of CORRESPONDENCES) {
      for (const asked of askedEveryWay) {
        for (const slip of likelySlips(id, asked)) {
          if (slip.kind === 'phoneme') expect(phonemes, id).not.toContain(slip.sound);
        }
      }
    }
  });

  // The order is common practice, no source: TRADE.md of this project names these.
  it('put first what teachers hear most: short e for short i, b for d, a silent e overlooked', () => {
    expect(said('i=IH', 'blending')[0]).toBe('EH');
    expect(said('e=EH', 'blending')[0]).toBe('IH');
    expect(said('b=B', 'blending')[0]).toBe('D');
    expect(said('d=D', 'visual')[0]).toBe('B');
    expect(said('a_e=EY', 'blending')[0]).toBe('AE');
    expect(said('ea=EH', 'blending')[0]).toBe('IY');
  });

  it.each(askedEveryWay)('ask of a cluster which letter, or what was done to it: %s', (asked) => {
    const ways = ['left-out', 'added-vowel', 'swapped', 'other'];
    expect(said('st=S+T', asked)).toEqual(['s=S', 't=T', ...ways]);
    expect(said('str=S+T+R', asked)).toEqual(['s=S', 't=T', 'r=R', ...ways]);
  });

  it('offer a letter’s name for a single letter, once, and an added vowel for consonants only', () => {
    expect(said('a=AE', 'visual')).toContain('letter-name');
    expect(said('a=AE', 'visual')).not.toContain('EY');
    expect(said('m=M', 'visual')).toContain('added-vowel');
    expect(said('a=AE', 'blending')).not.toContain('added-vowel');
    expect(said('sh=SH', 'blending')).not.toContain('letter-name');
  });

  it.each<[CardId, Asked, string]>([
    ['b=B', 'visual', 'D P letter-name added-vowel nothing other'],
    ['b=B', 'blending', 'D P left-out added-vowel letter-name other'],
    ['b=B', 'auditory', 'left-out P D other'],
    ['sh=SH', 'visual', 'S CH added-vowel nothing other'],
    ['sh=SH', 'auditory', 'left-out S CH other'],
  ])('%s, %s: looks, other sounds, then what is done to it', (id, asked, expected) => {
    expect(said(id, asked)).toEqual(expected.split(' '));
  });

  it('offer for a vowel with r the other vowels with r, and for a long vowel its short sound first', () => {
    expect(said('ar=AA+R', 'auditory')).toEqual(['left-out', 'ER', 'AO', 'other']);
    expect(said('i_e=AY', 'visual')[0]).toBe('IH');
    expect(said('o_e=OW', 'blending')[0]).toBe('AA');
  });

  it('offer for a card that is not in the tables what can be done to any', () => {
    expect(said('zzz=ZZ' as CardId, 'blending')).toEqual(['left-out', 'nothing', 'other']);
  });

  it('offer for a word known by sight another word, sounded out, or nothing', () => {
    expect(said('was=sight', 'visual')).toEqual([
      'another-word',
      'sounded-out',
      'nothing',
      'other',
    ]);
    expect(said('was=sight', 'auditory')).toEqual([
      'sounded-out',
      'left-out',
      'swapped',
      'another-word',
      'nothing',
      'other',
    ]);
  });

  it('offer for a sound that is written: left out, or taken for a sound like it', () => {
    expect(said('i=IH', 'auditory')).toEqual(['left-out', 'EH', 'IY', 'other']);
  });
});

describe('the neighbors of a sound', () => {
  // test/fixtures/vowel-formants.tsv: Peterson & Barney 1952, Table II, children's averages.
  const vowels = readFixture('vowel-formants.tsv');
  const bark = (hertz: number) => (26.81 * hertz) / (1960 + hertz) - 0.53; // Traunmüller 1990
  const apart = (one: string, other: string) => {
    const [from, to] = [one, other].map((phoneme) => vowels.find((row) => row.phoneme === phoneme));
    const along = (formant: 'f1_hz' | 'f2_hz') =>
      bark(Number(from?.[formant])) - bark(Number(to?.[formant]));
    return Math.hypot(along('f1_hz'), along('f2_hz'));
  };

  it.each<CardId>(['a=AE', 'e=EH', 'i=IH', 'o=AA', 'u=AH'])(
    'of the short vowel %s are among the three nearest in the published vowel loop',
    (id) => {
      const [right = ''] = soundsOf(id);
      const nearest = vowels
        .map(({ phoneme = '' }) => phoneme)
        .filter((phoneme) => phoneme !== right && phoneme !== 'ER')
        .sort((one, other) => apart(right, one) - apart(right, other))
        .slice(0, 3);
      const offered = likelySlips(id, 'auditory').flatMap((slip) =>
        slip.kind === 'phoneme' ? [slip.sound] : [],
      );
      expect(offered.length).toBeGreaterThan(0);
      for (const sound of offered) expect(nearest, id).toContain(sound);
    },
  );

  // test/fixtures/consonant-features.tsv: the articulatory features of Miller & Nicely 1955.
  const features = readFixture('consonant-features.tsv');
  const differences = (one: Phoneme, other: Phoneme) => {
    const [left, right] = [one, other].map((sound) =>
      features.find(({ phoneme }) => phoneme === sound),
    );
    if (!left || !right) return null;
    return ['voicing', 'nasality', 'affrication', 'duration', 'place'].filter(
      (feature) => left[feature] !== right[feature],
    );
  };

  it('of a consonant differ from it in one published feature, or in two of them', () => {
    let compared = 0;
    for (const { phoneme } of features) {
      const card = CORRESPONDENCES.find(
        ({ phonemes, kind }) =>
          phonemes.length === 1 && phonemes[0] === phoneme && kind !== 'silent',
      );
      for (const slip of card ? likelySlips(card.id, 'auditory') : []) {
        const between =
          slip.kind === 'phoneme' ? differences(phoneme as Phoneme, slip.sound) : null;
        if (between === null) continue;
        compared += 1;
        expect(between.length, `${phoneme} ${named(slip)}`).toBeLessThanOrEqual(
          between.includes('place') ? 2 : 1,
        );
      }
    }
    expect(compared).toBeGreaterThan(24);
  });
});
