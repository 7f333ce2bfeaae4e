import { type CardId, graphemeOf } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import type { Item } from '../sequence.ts';

/** What letters may mean, when they say it in several ways: a question with its answers. */
export interface SoundQuestion {
  /** The whole question: “th as in thumb or feather?” */
  readonly asks: string;
  readonly answers: readonly SoundAnswer[];
}

/** One answer: its name, the items it stands for, and what to write so that nobody has to ask. */
export interface SoundAnswer {
  readonly says: string;
  readonly items: readonly Item[];
  readonly writes: string;
}

/** Letters whose first mention may mean either sound. */
const EITHER: Readonly<Record<string, readonly CardId[]>> = {
  th: ['th=TH', 'th=DH'],
  oo: ['oo=UW', 'oo=UH'],
  ow: ['ow=OW', 'ow=AW'],
  ea: ['ea=IY', 'ea=EH'],
  ie: ['ie=IY', 'ie=AY'],
  ear: ['ear=IH+R', 'ear=EH+R', 'ear=ER'],
};

/** Letters that are a card and a common word, and which card. */
const CARD_OR_WORD: Readonly<Record<string, CardId>> = { are: 'are=EH+R', our: 'our=AW+ER' };

/** Words that are never meant as the rare spellings with the same letters: *t – the*. */
export const WORD_FIRST: ReadonlySet<string> = new Set(
  'the be he me she we de ye oh owe awe'.split(' '),
);

/** Sounds taught together whenever the letters are named. */
const TOGETHER: Readonly<Record<string, readonly CardId[]>> = {
  u_e: ['u_e=UW', 'u_e=Y+UW'],
  ue: ['ue=UW', 'ue=Y+UW'],
  ew: ['ew=UW', 'ew=Y+UW'],
};

/** What a spelling means once its sounds before were taught, in turn. */
const LATER: Readonly<Record<string, readonly (readonly CardId[])[]>> = {
  c: [['c=S', 'ce=S']],
  g: [['g=JH', 'ge=JH']],
  s: [['s=Z']],
  y: [['y=AY'], ['y=IY']],
  e: [['e=IY']],
  i: [['i=AY']],
  o: [['o=OW']],
  u: [['u=UW', 'u=Y+UW']],
  ch: [['ch=K'], ['ch=SH']],
  th: [['th=DH'], ['th=TH']],
  oo: [['oo=UH'], ['oo=UW']],
  ow: [['ow=AW'], ['ow=OW']],
  ea: [['ea=EH'], ['ea=IY']],
  ie: [['ie=AY'], ['ie=IY']],
  ou: [['ou=AH'], ['ou=UW']],
};

/** What plain letters mean in a list whose earlier lines taught `before`; null when they name no card. */
export function meaningOf(
  grapheme: string,
  first: CardId | undefined,
  before: ReadonlySet<CardId>,
): { readonly ids: readonly CardId[]; readonly again: boolean } | SoundQuestion | null {
  const cardOrWord = CARD_OR_WORD[grapheme];
  if (cardOrWord) return cardOrWordQuestion(grapheme, cardOrWord);
  const together = TOGETHER[grapheme];
  if (together) return { ids: together, again: false };
  const either = EITHER[grapheme];
  const known = either?.some((id) => before.has(id)) ?? (first !== undefined && before.has(first));
  if (either && !known) return eitherQuestion(grapheme, either);
  if (first === undefined) return null;
  if (!known) return { ids: [first], again: false };
  if (grapheme === 'a' && !before.has('a=EY')) return secondA;
  const later = LATER[grapheme]?.find((ids) => ids.some((id) => !before.has(id)));
  return { ids: later ?? [first], again: later !== undefined };
}

const secondA: SoundQuestion = {
  asks: 'a once more: as in acorn, or the word a?',
  answers: [
    { says: 'acorn', items: [{ kind: 'card', id: 'a=EY' }], writes: 'long a' },
    { says: 'the word a', items: [{ kind: 'word', word: 'a' }], writes: 'word:a' },
  ],
};

function eitherQuestion(grapheme: string, ids: readonly CardId[]): SoundQuestion {
  const single = ids.map(answerOf);
  const names = single.map(({ says }) => says);
  const both: SoundAnswer = {
    says: ids.length === 2 ? 'both, one card each' : 'all, one card each',
    items: single.flatMap(({ items }) => items),
    writes: single.map(({ writes }) => writes).join(', '),
  };
  return {
    asks: `${grapheme} as in ${names.slice(0, -1).join(', ')} or ${names.at(-1)}?`,
    answers: [...single, both],
  };
}

function cardOrWordQuestion(grapheme: string, id: CardId): SoundQuestion {
  const card = answerOf(id);
  return {
    asks: `${grapheme} as in ${card.says}, or the word ${grapheme}?`,
    answers: [
      card,
      {
        says: `the word ${grapheme}`,
        items: [{ kind: 'word', word: grapheme }],
        writes: `word:${grapheme}`,
      },
    ],
  };
}

function answerOf(id: CardId): SoundAnswer {
  const grapheme = graphemeOf(id);
  const keyword = correspondenceById.get(id)?.keyword ?? id;
  return {
    says: keyword,
    items: [{ kind: 'card', id }],
    writes: `${grapheme} as in ${keyword}`,
  };
}
