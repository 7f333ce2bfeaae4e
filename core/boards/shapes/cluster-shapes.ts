import { beginnings, endings, type PileSpec, type Shape, shortVowels } from './shapes.ts';

/**
 * Shapes whose clusters are built of single cards, each consonant in a pile of
 * its own. Which pairs make a cluster is for the onset and coda rules to say.
 */
export const CLUSTER_SHAPES: readonly Shape[] = [
  {
    id: 'ccvc',
    title: 'Clusters at the beginning, card by card',
    example: 's-t-o-p',
    form: 'one',
    piles: [
      pile('beginning', 'b=B c=K d=D f=F g=G p=P s=S t=T sh=SH th=TH'),
      pile('beginning', 'c=K k=K l=L m=M n=N p=P r=R t=T w=W'),
      shortVowels,
      singles(endings),
    ],
  },
  {
    id: 'cvcc',
    title: 'Clusters at the end, card by card',
    example: 'l-a-m-p',
    form: 'one',
    piles: [
      singles(beginnings),
      shortVowels,
      pile('ending', 'c=K f=F l=L m=M n=N p=P s=S x=K+S'),
      pile('ending', 'd=D f=F k=K m=M p=P t=T ch=CH th=TH'),
    ],
  },
  {
    id: 'ccvcc',
    title: 'Clusters on both sides, card by card',
    example: 's-t-a-m-p',
    form: 'one',
    piles: [
      pile('beginning', 'b=B c=K d=D f=F g=G p=P s=S t=T th=TH'),
      pile('beginning', 'c=K k=K l=L m=M n=N p=P r=R t=T w=W'),
      shortVowels,
      pile('ending', 'c=K f=F l=L m=M n=N p=P s=S'),
      pile('ending', 'd=D f=F k=K m=M p=P t=T ch=CH th=TH'),
    ],
  },
];

function pile(role: PileSpec['role'], ids: string): PileSpec {
  const known = new Set(ids.split(' '));
  return { role, takes: ({ id }) => known.has(id) };
}

/** The same pile without cluster and welded cards. */
function singles({ role, takes }: PileSpec): PileSpec {
  return { role, takes: (card) => card.parts.length === 0 && takes(card) };
}
