import type { Phoneme } from '../language/phonemes.ts';
import type { Screened } from './screen.ts';

/** One word that a class did not see, and why, in words fit to be read aloud. */
export interface HiddenWord {
  readonly word: string;
  readonly sounds: readonly Phoneme[];
  readonly verdict: 'stop' | 'ask';
  readonly category: string;
  readonly reason: string;
}

/**
 * What the screen hides of the words that a drill could have shown: each
 * spelling with its sounds once, those to be asked about first (they are the
 * teacher's to decide), each part in the order given.
 */
export function hiddenWords(
  words: readonly {
    readonly word: string;
    readonly sounds: readonly Phoneme[];
    readonly screened: Screened;
  }[],
): readonly HiddenWord[] {
  const hidden = new Map<string, HiddenWord>();
  for (const { word, sounds, screened } of words) {
    const { verdict, category, reason } = screened;
    if (verdict === 'clear') continue;
    hidden.set(`${word} ${sounds.join(' ')}`, {
      word,
      sounds,
      verdict,
      category: category ?? 'other',
      reason: reason ?? 'not for class',
    });
  }
  const all = [...hidden.values()];
  return [
    ...all.filter(({ verdict }) => verdict === 'ask'),
    ...all.filter(({ verdict }) => verdict === 'stop'),
  ];
}
