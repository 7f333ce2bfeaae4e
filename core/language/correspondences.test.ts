import { describe, expect, it } from 'vitest';
import { readFixture } from '../../test/fixture.ts';
import { type CardId, makeCardId, parseCardId } from './card-id.ts';
import { isVowelCard } from './correspondence.ts';
import {
  COMPOUND_CARDS,
  CORRESPONDENCES,
  correspondenceById,
  correspondencesByGrapheme,
} from './correspondences.ts';

describe('the table of correspondences', () => {
  it('has each id once, and each id reads back to its grapheme and sounds', () => {
    expect(correspondenceById.size).toBe(CORRESPONDENCES.length);
    for (const { id, grapheme, phonemes } of CORRESPONDENCES) {
      expect(id).toBe(makeCardId(grapheme, phonemes));
      expect(parseCardId(id)).toEqual({ grapheme, phonemes });
    }
  });

  it('gives every card that carries others parts that spell and sound it', () => {
    for (const card of COMPOUND_CARDS) {
      const parts = card.parts.map((id) => correspondenceById.get(id));
      expect(parts.map((part) => part?.grapheme).join('')).toBe(card.grapheme);
      expect(parts.flatMap((part) => part?.phonemes ?? [])).toEqual(card.phonemes);
    }
  });

  it('keeps cards off the places where English spelling does not put them', () => {
    // Common practice, no source, for the first list; the second also in England's National
    // Curriculum, English Appendix 1 (ff, ll, ss, zz, ck and tch follow a vowel).
    const never = (grapheme: string, place: string) =>
      (correspondencesByGrapheme.get(grapheme) ?? []).every(
        (card) => !(card.places as readonly string[]).includes(place),
      );
    for (const grapheme of ['h', 'j', 'qu', 'v', 'w', 'y', 'r']) {
      expect(never(grapheme, 'ending'), grapheme).toBe(true);
    }
    for (const grapheme of ['x', 'ck', 'ng', 'nk', 'ff', 'll', 'ss', 'zz', 'tch', 'dge', 'le']) {
      expect(never(grapheme, 'beginning'), grapheme).toBe(true);
    }
  });

  it('puts vowels in the middle and consonants at the sides', () => {
    for (const card of CORRESPONDENCES) {
      if (card.places.length === 0) continue;
      expect(card.places.includes('middle'), card.id).toBe(isVowelCard(card));
    }
  });

  it('holds every spelling that Texas asks of grade 1', () => {
    // 19 TAC 110.12(b)(3)(A), 2008 adoption: the spellings of the row, as ids.
    const row = readFixture('teks-syllables.tsv').find(({ type }) => type === 'GPC list');
    expect(row?.division_or_text).toContain('digraphs ch tch sh th wh ng ck kn -dge ph');
    const asked =
      'b=B c=K c=S d=D f=F g=G g=JH h=HH j=JH k=K l=L m=M n=N p=P qu=K+W r=R s=S s=Z t=T v=V w=W ' +
      'x=K+S y=Y z=Z a=AE e=EH i=IH o=AA u=AH a_e=EY e=IY i_e=AY o_e=OW u_e=UW y=IY y=AY ' +
      'bl=B+L st=S+T ch=CH tch=CH sh=SH th=TH wh=W ng=NG ck=K kn=N dge=JH ph=F oo=UH oo=UW ' +
      'ea=IY ea=EH ee=IY ow=AW ow=OW ou=AW ay=EY ai=EY aw=AO au=AO ew=UW oa=OW ie=IY ie=AY ' +
      'igh=AY oy=OY oi=OY';
    for (const id of asked.split(' ') as CardId[])
      expect(correspondenceById.has(id), id).toBe(true);
  });
});
