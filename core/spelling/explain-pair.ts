import type { Phoneme } from '../language/phonemes.ts';
import { COSTS } from './costs.ts';
import type { Explained } from './explain.ts';
import { isNamed, NAME_SOUNDS } from './letter-names.ts';
import type { Target } from './target.ts';
import type { Voice, Written } from './voices.ts';

/** One way to take letters as two neighboring cards; `length` letters of the attempt are used. */
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
    if (attempt[at] === (one.length === 1 ? other[0] : one[0]) && at + length <= attempt.length) {
      const letters = attempt.slice(at, at + length);
      const isSwapped = letters === other + one;
      if (letters !== one + other && (isSwapped || letters === crossed(one, other))) {
        const cost = isSwapped ? COSTS.order : COSTS.orderAcross;
        found.push({ length, letters: [one, other], explained: [ORDER, ORDER], cost });
      }
    }
  }
  for (const { letters, to, split, named, voices } of written) {
    if (split || isOf(first, letters) || isOf(second, letters)) continue;
    const voice = voiceOfBoth(voices, first.phonemes, second.phonemes);
    const isName =
      named && !voice && isNamed(NAME_SOUNDS, letters, [...first.phonemes, ...second.phonemes]);
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

/** The voice that says the sounds of both, one after the other. */
function voiceOfBoth(
  voices: readonly Voice[],
  first: readonly Phoneme[],
  second: readonly Phoneme[],
): Voice | null {
  for (const voice of voices) {
    const { phonemes } = voice.row;
    if (phonemes.length < 2 || phonemes.length !== first.length + second.length) continue;
    let same = 0;
    while (
      same < phonemes.length &&
      phonemes[same] === (first[same] ?? second[same - first.length])
    ) {
      same++;
    }
    if (same === phonemes.length) return voice;
  }
  return null;
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
