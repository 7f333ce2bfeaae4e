import type { Correspondence } from '../../language/correspondence.ts';
import { beginnings, endings, type PileSpec, type Shape, shortVowels, vowels } from './shapes.ts';

const silentEEndings: PileSpec = { role: 'ending', takes: isBeforeSilentE };

/** Shapes of one syllable: a beginning, a vowel and an ending, or no ending. */
export const SHORT_SHAPES: readonly Shape[] = [
  {
    id: 'syllable',
    title: 'One-syllable words',
    example: 'ship, rain, bike',
    form: 'one',
    piles: [
      beginnings,
      vowels(isInnerVowel),
      { role: 'ending', takes: (card) => endings.takes(card) || isBeforeSilentE(card) },
    ],
  },
  {
    id: 'closed',
    title: 'Short vowels, closed in',
    example: 'ship',
    form: 'one',
    piles: [beginnings, shortVowels, endings],
  },
  {
    id: 'silent-e',
    title: 'Silent e',
    example: 'bike',
    form: 'one',
    piles: [beginnings, vowels(({ kind }) => kind === 'silent-e'), silentEEndings],
  },
  {
    id: 'vowel-team',
    title: 'Vowel teams',
    example: 'rain, coin',
    form: 'one',
    piles: [
      beginnings,
      vowels((card) => isInnerVowel(card) && /^(vowel-team|diphthong)$/.test(card.kind)),
      endings,
    ],
  },
  {
    id: 'diphthong',
    title: 'Vowels that glide',
    example: 'coin, cloud',
    form: 'one',
    piles: [beginnings, vowels((card) => isInnerVowel(card) && card.kind === 'diphthong'), endings],
  },
  {
    id: 'r-vowel',
    title: 'Vowels with r',
    example: 'bird',
    form: 'one',
    piles: [beginnings, vowels((card) => isInnerVowel(card) && card.kind === 'r-vowel'), endings],
  },
  {
    id: 'open',
    title: 'The vowel comes last',
    example: 'go, play, star',
    form: 'one',
    piles: [beginnings, vowels(isLastVowel)],
  },
];

/** Whether a vowel may stand inside a short word. */
export function isInnerVowel(card: Correspondence): boolean {
  return card.places.includes('middle') || BESIDE_A_NEIGHBOR.has(card.id);
}

/** Vowels that stand inside a short word beside certain letters: want, ball, old, kind, worm. */
const BESIDE_A_NEIGHBOR: ReadonlySet<string> = new Set(
  'a=AA a=AO al=AO al=AA o=OW i=AY ar=AO+R or=ER'.split(' '),
);

/** Vowels that can end a short word: me, go, fly; play, boy, saw; star, more. */
function isLastVowel({ id, kind, tier }: Correspondence): boolean {
  if (tier > 3) return false;
  if (kind === 'long-vowel') return /^(e=IY|o=OW|i=AY|y=AY)$/.test(id);
  if (kind === 'vowel-team' || kind === 'diphthong') return LAST_TEAMS.test(id);
  return kind === 'r-vowel' && LAST_R_VOWELS.test(id);
}

const LAST_TEAMS =
  /^(ay=EY|oy=OY|ow=|aw=AO|ew=|ue=.*UW$|oe=OW|ie=AY|ee=IY|ea=IY|igh=AY|eigh=EY|oo=UW|ey=|ye=AY)/;
const LAST_R_VOWELS =
  /^(ar=AA\+R|or=AO\+R|er=ER|ir=ER|ur=ER|air=|are=EH|ear=(IH|EH)|eer=|ore=|oar=|oor=|our=A|ire=|ure=(Y|UH)|ere=IH|ier=)/;
const BEFORE_SILENT_E = new Set(
  'b=B c=S d=D f=F g=JH k=K l=L m=M n=N p=P s=S s=Z t=T v=V z=Z'.split(' '),
);

function isBeforeSilentE({ id }: Correspondence): boolean {
  return BEFORE_SILENT_E.has(id);
}
