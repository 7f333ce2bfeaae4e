import type { Correspondence } from '../../language/correspondence.ts';
import { beginnings, endings, type PileSpec, type Shape, shortVowels, vowels } from './shapes.ts';
import { isInnerVowel } from './short-shapes.ts';

const simpleBeginnings: PileSpec = {
  role: 'beginning',
  takes: (card) => card.parts.length === 0 && beginnings.takes(card),
};
const simpleEndings: PileSpec = {
  role: 'ending',
  takes: (card) => card.parts.length === 0 && card.kind !== 'consonant-e' && endings.takes(card),
};
const openVowels: PileSpec = vowels(isOpenVowel);

/**
 * Shapes of two beats. The sound of the vowel follows the syllable it stands
 * in: long where the syllable is open (ta·ble), short where it is closed
 * (tab·ble).
 */
export const LONGER_SHAPES: readonly Shape[] = [
  {
    id: 'base-ending',
    title: 'A base and an ending',
    example: 'jump·ing',
    form: 'ending',
    piles: [
      beginnings,
      vowels((card) => isInnerVowel(card) && card.kind !== 'silent-e'),
      endings,
      ids('suffix', 's=S s=Z es=IH+Z ed=T ed=D ed=IH+D ing=IH+NG er=ER est=AX+S+T'),
    ],
  },
  {
    id: 'doubled',
    title: 'Two syllables, a doubled consonant between',
    example: 'rab·bit',
    form: 'doubled',
    piles: [
      simpleBeginnings,
      shortVowels,
      ids('bridge', 'bb=B dd=D ff=F gg=G ll=L mm=M nn=N pp=P ss=S tt=T zz=Z ck=K'),
      shortVowels,
      simpleEndings,
    ],
  },
  {
    id: 'closed-closed',
    title: 'Two closed syllables',
    example: 'nap·kin',
    form: 'two',
    piles: [
      simpleBeginnings,
      shortVowels,
      simpleEndings,
      simpleBeginnings,
      shortVowels,
      simpleEndings,
    ],
  },
  {
    id: 'open-closed',
    title: 'An open syllable, then a closed one',
    example: 'pi·lot',
    form: 'two',
    piles: [simpleBeginnings, openVowels, simpleBeginnings, shortVowels, simpleEndings],
  },
  {
    id: 'consonant-le',
    title: 'Consonant and le',
    example: 'ta·ble, bub·ble',
    form: 'le',
    piles: [
      beginnings,
      vowels((card) => shortVowels.takes(card) || isOpenVowel(card)),
      ids(
        'bridge',
        'b=B d=D f=F g=G p=P t=T bb=B dd=D ff=F gg=G pp=P ss=S tt=T zz=Z ck=K mp=M+P nd=N+D nt=N+T nk=NG+K',
      ),
      ids('suffix', 'le=AX+L'),
    ],
  },
];

/** One vowel letter that is long at the end of a syllable. */
function isOpenVowel({ id }: Correspondence): boolean {
  return /^(a=EY|e=IY|i=AY|o=OW|u=(Y\+)?UW)$/.test(id);
}

function ids(role: PileSpec['role'], text: string): PileSpec {
  const known = new Set(text.split(' '));
  return { role, takes: ({ id }) => known.has(id) };
}
