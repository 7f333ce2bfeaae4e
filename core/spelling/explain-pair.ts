import { COSTS } from './costs.ts';
import type { Explained } from './explain.ts';
import { isNamed, NAME_SOUNDS } from './letter-names.ts';
import type { Target } from './target.ts';
import type { Written } from './voices.ts';

/** One way to take letters as two neighbouring cards; `length` letters of the attempt are used. */
export interface ExplainedPair {
  readonly length: number;
  readonly letters: readonly [string, string];
  readonly explained: readonly [Explained, Explained];
  readonly cost: number;
}

/**
 * Letters that stand for two cards at once: in each other's place (*sotp*, *sihp*), or one grapheme for
 * the sounds of both (*sox* for *socks*, *u* for *you*). A grapheme that is one of the two cards as the
 * word has it is that card, and the other was left out.
 */
export function explainPair(
  first: Target,
  second: Target,
  attempt: string,
  at: number,
  written: readonly Written[],
): readonly ExplainedPair[] {
  const found: ExplainedPair[] = [];
  if (!first.split && !second.split) {
    const [one, other] = [first.grapheme, second.grapheme];
    const length = one.length + other.length;
    const letters = attempt.slice(at, at + length);
    if (letters.length === length && letters !== one + other) {
      const isSwapped = letters === other + one;
      if (isSwapped || letters === crossed(one, other)) {
        const cost = isSwapped ? COSTS.order : COSTS.orderAcross;
        found.push({ length, letters: [one, other], explained: [ORDER, ORDER], cost });
      }
    }
  }
  const sounds = [...first.phonemes, ...second.phonemes].join(' ');
  for (const { letters, to, split, named, voices } of written) {
    if (split || isOf(first, letters) || isOf(second, letters)) continue;
    const voice = voices.find(
      ({ row }) => row.phonemes.length > 1 && row.phonemes.join(' ') === sounds,
    );
    const isName = named && isNamed(NAME_SOUNDS, letters, [...first.phonemes, ...second.phonemes]);
    if (!voice && !isName) continue;
    const explained: Explained = {
      verdict: 'same-sound',
      cost: 0,
      row: voice?.row ?? null,
      fact: voice?.by === 'rule' ? null : 'letter-name',
      habit: null,
    };
    found.push({
      length: to - at,
      letters: [letters, letters],
      explained: [explained, explained],
      cost: voice?.by === 'rule' ? COSTS.habitMissed : COSTS.letterName,
    });
  }
  return found;
}

/** Whether letters are a card as the word has it, its silent e apart. */
function isOf({ grapheme }: Target, letters: string): boolean {
  return grapheme === letters || grapheme === `${letters}_e`;
}

const ORDER: Explained = {
  verdict: 'order',
  cost: COSTS.order,
  row: null,
  fact: null,
  habit: null,
};

/** The letters of two cards with the two that meet exchanged: s·ih·p of sh·i·p. */
function crossed(one: string, other: string): string {
  return one.slice(0, -1) + other[0] + one.at(-1) + other.slice(1);
}
