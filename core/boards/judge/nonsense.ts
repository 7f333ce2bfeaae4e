/**
 * How good a nonsense word is for practice. The judge decides what may be
 * nonsense at all (legal, no sound-alike, no name). Here two published measures
 * rank those words from easy to hard.
 *
 * Measures: the phonotactic probability of pairs of sounds (Vitevitch & Luce
 * 2004, core/words/phonotactics.ts) and the number of real neighbors
 * (core/boards/judge/neighbors.ts). Nonsense of likely sounds, which has many
 * neighbors, is repeated faster than other nonsense (Vitevitch & Luce, "When
 * words compete: levels of processing in perception of spoken words",
 * Psychological Science 9, 1998). The two have no common unit, so their ranks
 * are averaged; that both weigh the same is ours (common practice, no source).
 */
import type { Phoneme } from '../../language/phonemes.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import { hasUnheardPair, phonotacticScore } from '../../words/phonotactics.ts';
import { realNeighbors } from './neighbors.ts';

/** Of a word only its sounds count here. */
export interface SaidRow {
  readonly sounds: readonly Phoneme[];
}

/**
 * How easy each word is to say among those of as many sounds: 0 the hardest to 1
 * the easiest, the mean of its ranks by the two measures. Equal words have equal
 * ranks; a word alone has a half.
 */
export function easeAmong(words: readonly SaidRow[], lexicon: Lexicon): readonly number[] {
  const ease: number[] = new Array(words.length).fill(0.5);
  const lengths = new Map<number, number[]>();
  words.forEach(({ sounds }, at) => {
    const alike = lengths.get(sounds.length);
    if (alike) alike.push(at);
    else lengths.set(sounds.length, [at]);
  });
  for (const places of lengths.values()) {
    const said = places.map((at) => (words[at] as SaidRow).sounds);
    const likely = ranksOf(said.map((sounds) => phonotacticScore(sounds, lexicon)));
    const near = ranksOf(said.map((sounds) => realNeighbors(sounds, lexicon)));
    places.forEach((at, place) => {
      ease[at] = ((likely[place] as number) + (near[place] as number)) / 2;
    });
  }
  return ease;
}

/**
 * Whether a nonsense word waits while there are better ones: it has two sounds in
 * a row that no English word has at that place.
 */
export function isAwkward({ sounds }: SaidRow, lexicon: Lexicon): boolean {
  return hasUnheardPair(sounds, lexicon);
}

/** Nonsense words from easy to hard: by how many sounds they have, then awkward ones last, then by ease. */
export function easyToHard<T extends SaidRow>(words: readonly T[], lexicon: Lexicon): readonly T[] {
  const ease = easeAmong(words, lexicon);
  return words
    .map((word, at) => ({
      word,
      ease: isAwkward(word, lexicon) ? -1 : (ease[at] as number),
    }))
    .sort((a, b) => a.word.sounds.length - b.word.sounds.length || b.ease - a.ease)
    .map(({ word }) => word);
}

/** Ranks from 0 (the lowest value) to 1, the mean of their places for equal values. */
function ranksOf(values: readonly number[]): readonly number[] {
  const order = values.map((_, at) => at).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0));
  const ranks: number[] = new Array(values.length).fill(0.5);
  if (values.length < 2) return ranks;
  for (let from = 0; from < order.length; ) {
    let to = from;
    while (to < order.length && values[order[to] as number] === values[order[from] as number]) to++;
    for (let at = from; at < to; at++) {
      ranks[order[at] as number] = (from + to - 1) / 2 / (values.length - 1);
    }
    from = to;
  }
  return ranks;
}
