import type { CardId } from '../language/card-id.ts';
import type { Sequence } from '../sequence/sequence.ts';
import { stepOf } from '../sequence/step-of.ts';
import { wordNeeds } from '../words/decodable.ts';
import { IMPLIED } from '../words/implied.ts';
import { keptByWord } from '../words/kept-by-word.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { Needs } from '../words/needs.ts';
import { type MadeOf, madeOf } from '../words/word-family.ts';

/** The first step after which word `index` can be read, however it is read; null if none. Kept once found. */
export function stepOfWord(index: number, lexicon: Lexicon, sequence: Sequence): number | null {
  let steps = stepsBySequence.get(sequence);
  if (!steps) {
    steps = keptByWord((asked, list) => findStep(asked, list, sequence));
    stepsBySequence.set(sequence, steps);
  }
  return steps(index, lexicon);
}

/** Sequences are values that never change, so a step found stays true as long as its sequence lives. */
const stepsBySequence = new WeakMap<Sequence, (index: number, lexicon: Lexicon) => number | null>();

function findStep(index: number, lexicon: Lexicon, sequence: Sequence): number | null {
  const ways = [stepByHeart(index, lexicon, sequence), stepByCards(index, lexicon, sequence)];
  for (const made of madeOf(index, lexicon)) ways.push(stepByParts(made, lexicon, sequence));
  return ways.reduce(earliest, null);
}

/** The first step after which all needs are met; null if none. */
export function stepOfNeeds({ ids, habits }: Needs, sequence: Sequence): number | null {
  return latest([
    ...ids.map((id) => stepOfCard(id, sequence)),
    ...habits.map((habit) => stepOf(sequence, { kind: 'habit', habit })),
  ]);
}

function stepOfCard(id: CardId, sequence: Sequence): number | null {
  const own = stepOf(sequence, { kind: 'card', id });
  const implied = (IMPLIED.get(id) ?? []).map((ids) =>
    latest(ids.map((other) => stepOf(sequence, { kind: 'card', id: other }))),
  );
  return implied.reduce(earliest, own);
}

function stepByHeart(index: number, lexicon: Lexicon, sequence: Sequence): number | null {
  return stepOf(sequence, { kind: 'word', word: lexicon.word(index) });
}

function stepByCards(index: number, lexicon: Lexicon, sequence: Sequence): number | null {
  return lexicon.isRegular(index) ? stepOfNeeds(wordNeeds(index, lexicon), sequence) : null;
}

/** A form or compound one of whose parts at least is known by heart. */
function stepByParts(made: MadeOf, lexicon: Lexicon, sequence: Sequence): number | null {
  const hearts = made.parts.map((part) => stepByHeart(part, lexicon, sequence));
  if (hearts.every((step) => step === null)) return null;
  const parts = made.parts.map((part, at) => {
    const heart = hearts[at] ?? null;
    return made.parts.length === 1 ? heart : earliest(heart, stepByCards(part, lexicon, sequence));
  });
  const heart = hearts.reduce(earliest, null) as number;
  const ending = stepOfNeeds(
    { ids: made.ending.filter(isNoSchwa), habits: habitsOf(made) },
    sequence,
  );
  return latest([...parts, ending, heart]);
}

function isNoSchwa(id: CardId): boolean {
  return !id.endsWith('=AX');
}

function habitsOf({ ending, beat }: MadeOf): Needs['habits'] {
  const schwa = ending.some((id) => !isNoSchwa(id)) ? (['schwa'] as const) : [];
  return beat ? ['long-words', ...schwa] : schwa;
}

function latest(steps: readonly (number | null)[]): number | null {
  return steps.reduce<number | null>(
    (most, step) => (most === null || step === null ? null : Math.max(most, step)),
    0,
  );
}

function earliest(left: number | null, right: number | null): number | null {
  if (left === null) return right;
  return right === null ? left : Math.min(left, right);
}
