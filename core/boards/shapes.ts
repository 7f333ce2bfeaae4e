import { type Correspondence, isVowelCard } from '../language/correspondence.ts';

/** What stands in one pile: consonants before the vowel, the vowel, or consonants after it. */
export type PileRole = 'beginning' | 'vowel' | 'ending';

/** One pile of a shape and the cards that may lie in it. */
export interface PileSpec {
  readonly role: PileRole;
  readonly takes: (card: Correspondence) => boolean;
}

/**
 * How a row of cards makes a word: piles from left to right, exactly one of
 * them the vowel's. Which of the combinations are legal is for the spelling
 * rules to say; a shape only says which cards may come to its piles. Words of
 * two syllables will be two shapes side by side.
 */
export interface Shape {
  readonly id: string;
  readonly title: string;
  readonly example: string;
  readonly piles: readonly PileSpec[];
}

const beginnings: PileSpec = { role: 'beginning', takes: mayBegin };
const endings: PileSpec = { role: 'ending', takes: (card) => card.places.includes('ending') };
const silentEEndings: PileSpec = { role: 'ending', takes: isBeforeSilentE };

export const SHAPES: readonly Shape[] = [
  {
    id: 'syllable',
    title: 'One-syllable words',
    example: 'ship, rain, bike',
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
    piles: [beginnings, vowels(({ kind }) => kind === 'short-vowel'), endings],
  },
  {
    id: 'silent-e',
    title: 'Silent e',
    example: 'bike',
    piles: [beginnings, vowels(({ kind }) => kind === 'silent-e'), silentEEndings],
  },
  {
    id: 'vowel-team',
    title: 'Vowel teams',
    example: 'rain, coin',
    piles: [
      beginnings,
      vowels((card) => isInnerVowel(card) && /^(vowel-team|diphthong)$/.test(card.kind)),
      endings,
    ],
  },
  {
    id: 'r-vowel',
    title: 'Vowels with r',
    example: 'bird',
    piles: [beginnings, vowels((card) => isInnerVowel(card) && card.kind === 'r-vowel'), endings],
  },
  {
    id: 'open',
    title: 'The vowel comes last',
    example: 'go, play, star',
    piles: [beginnings, vowels(isLastVowel)],
  },
];

export const shapeById: ReadonlyMap<string, Shape> = new Map(
  SHAPES.map((shape) => [shape.id, shape]),
);

/** The one pile of a shape that holds its vowels. */
export function vowelPile(shape: Shape): PileSpec {
  return shape.piles.find(({ role }) => role === 'vowel') as PileSpec;
}

/** The cards among `cards` that may lie in each pile, in the order given. */
export function candidates(
  shape: Shape,
  cards: readonly Correspondence[],
): readonly (readonly Correspondence[])[] {
  return shape.piles.map((pile) => cards.filter(pile.takes));
}

function vowels(takes: (card: Correspondence) => boolean): PileSpec {
  return { role: 'vowel', takes: (card) => isVowelCard(card) && card.tier < 4 && takes(card) };
}

function mayBegin(card: Correspondence): boolean {
  return !isVowelCard(card) && card.places.includes('beginning');
}

function isInnerVowel(card: Correspondence): boolean {
  return card.places.includes('middle') || BESIDE_A_NEIGHBOUR.has(card.id);
}

/** Vowels that stand inside a short word beside certain letters: want, ball, old, kind, worm. */
const BESIDE_A_NEIGHBOUR: ReadonlySet<string> = new Set(
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
