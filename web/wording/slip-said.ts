import { lettersShown } from '../../core/language/card-id.ts';
import type { SoundStyle } from '../../core/language/phonemes.ts';
import { soundLabel } from '../../core/language/phonemes.ts';
import type { Slip } from '../../core/log/event.ts';

/** What was heard instead, in a few words: `said /ĭ/`, `left it out`. */
export function slipSaid(slip: Slip, notation: SoundStyle): string {
  if (slip.kind === 'phoneme') return `said ${soundLabel([slip.sound], notation)}`;
  return slip.kind === 'letter' ? `missed its ${lettersShown(slip.card)}` : said[slip.kind];
}

const said: Readonly<Record<Exclude<Slip['kind'], 'phoneme' | 'letter'>, string>> = {
  'letter-name': 'said the letter’s name',
  'left-out': 'left it out',
  'added-vowel': 'added a vowel',
  swapped: 'swapped two sounds',
  'another-word': 'said another word',
  'sounded-out': 'sounded it out',
  nothing: 'said nothing',
  other: 'something else',
};

/** What was heard in all, the most frequent first: `said /ĭ/ 3 times, left it out`; empty for nothing. */
export function slipsSaid(slips: readonly (Slip | null)[], notation: SoundStyle): string {
  const counts = new Map<string, number>();
  for (const slip of slips) {
    if (slip === null) continue;
    const words = slipSaid(slip, notation);
    counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  return [...counts]
    .sort(([, left], [, right]) => right - left)
    .map(([words, count]) => `${words}${timesSaid(count)}`)
    .join(', ');
}

function timesSaid(count: number): string {
  if (count === 1) return '';
  return count === 2 ? ' twice' : ` ${count} times`;
}
