import type { CardId } from '../language/card-id.ts';

/** Two cards that children mix up, and the least number of steps between their beginnings. */
export interface Apart {
  readonly cards: readonly [CardId, CardId];
  readonly steps: number;
  /** How they are alike, to end the sentence “Kept nine steps from d, …”. */
  readonly because: string;
}

const looks = 'which it looks like';
const sounds = 'which it sounds like';
const both = 'which it looks and sounds like';

/**
 * Look-alikes and sound-alikes. That reversible letters (b, d, p, q) and
 * neighboring sounds (voiced and unvoiced pairs; short e and short i) are the
 * usual mix-ups, and that they should not be new at the same time, is common
 * practice; how many steps apart is ours.
 */
export const APART: readonly Apart[] = [
  { cards: ['b=B', 'd=D'], steps: 8, because: both },
  { cards: ['b=B', 'p=P'], steps: 5, because: both },
  { cards: ['d=D', 'p=P'], steps: 4, because: looks },
  { cards: ['p=P', 'qu=K+W'], steps: 5, because: looks },
  { cards: ['m=M', 'n=N'], steps: 5, because: both },
  { cards: ['n=N', 'u=AH'], steps: 4, because: looks },
  { cards: ['h=HH', 'n=N'], steps: 3, because: looks },
  { cards: ['m=M', 'w=W'], steps: 4, because: looks },
  { cards: ['i=IH', 'l=L'], steps: 3, because: looks },
  { cards: ['i=IH', 'j=JH'], steps: 3, because: looks },
  { cards: ['f=F', 't=T'], steps: 3, because: looks },
  { cards: ['v=V', 'w=W'], steps: 4, because: looks },
  { cards: ['v=V', 'y=Y'], steps: 3, because: looks },
  { cards: ['a=AE', 'o=AA'], steps: 4, because: looks },
  { cards: ['e=EH', 'i=IH'], steps: 8, because: sounds },
  { cards: ['a=AE', 'e=EH'], steps: 6, because: sounds },
  { cards: ['a=AE', 'i=IH'], steps: 4, because: sounds },
  { cards: ['e=EH', 'o=AA'], steps: 5, because: looks },
  { cards: ['o=AA', 'u=AH'], steps: 5, because: sounds },
  { cards: ['d=D', 't=T'], steps: 4, because: sounds },
  { cards: ['c=K', 'g=G'], steps: 4, because: sounds },
  { cards: ['g=G', 'k=K'], steps: 3, because: sounds },
  { cards: ['g=G', 'j=JH'], steps: 4, because: 'since both can say the sound of j' },
  { cards: ['f=F', 'v=V'], steps: 5, because: sounds },
  { cards: ['s=S', 'z=Z'], steps: 5, because: sounds },
  { cards: ['w=W', 'wh=W'], steps: 5, because: sounds },
  { cards: ['ch=CH', 'sh=SH'], steps: 6, because: both },
  { cards: ['f=F', 'th=TH'], steps: 5, because: sounds },
  { cards: ['n=N', 'ng=NG'], steps: 5, because: sounds },
  { cards: ['er=ER', 'ir=ER'], steps: 2, because: sounds },
  { cards: ['ir=ER', 'ur=ER'], steps: 2, because: both },
  { cards: ['er=ER', 'ur=ER'], steps: 2, because: sounds },
  { cards: ['ee=IY', 'ea=IY'], steps: 2, because: both },
  { cards: ['oa=OW', 'ow=OW'], steps: 2, because: sounds },
  { cards: ['oo=UW', 'oo=UH'], steps: 3, because: looks },
  { cards: ['ou=AW', 'ow=AW'], steps: 2, because: both },
  { cards: ['ear=IH+R', 'ear=EH+R'], steps: 3, because: looks },
  { cards: ['ie=IY', 'ie=AY'], steps: 2, because: looks },
  { cards: ['ew=UW', 'ue=UW'], steps: 2, because: sounds },
  { cards: ['ou=UW', 'ou=AH'], steps: 3, because: looks },
  { cards: ['ch=K', 'ch=SH'], steps: 2, because: looks },
];
