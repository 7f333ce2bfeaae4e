import type { Correspondence } from '../language/correspondence.ts';
import type { SpellingHabit } from './attempt.ts';

/** Whether only the silent e was not written: *lak* for *lake*, *hav* for *have*. */
export function missesSilentE(card: Correspondence | null, letters: string): boolean {
  if (!card) return false;
  if (card.kind === 'silent-e') return `${letters}_e` === card.grapheme;
  return card.kind === 'consonant-e' && `${letters}e` === card.grapheme;
}

/**
 * The habit that was missed where another spelling of the sound was written; null when it is a
 * spelling to be known word by word, such as *ai* or *a_e*. `ends`: the card stands at the word's end.
 */
export function habitMissed(
  card: Correspondence,
  letters: string,
  ends: boolean,
): SpellingHabit | null {
  const { grapheme, kind } = card;
  if (missesSilentE(card, letters)) return 'silent-e';
  if (grapheme === 'ed' || grapheme === 'es') return grapheme;
  if (isDoubleOf(grapheme, letters) || isDoubleOf(letters, grapheme)) {
    return ends && /^[flsz]/.test(grapheme) ? 'ff-ll-ss-zz' : 'doubling';
  }
  if (kind === 'consonant' || kind === 'digraph' || kind === 'double') {
    if (HARD_C.has(grapheme) && HARD_C.has(letters)) return 'c-k-ck';
  }
  const pair = [grapheme, letters].sort().join(' ');
  return TRIGRAPHS.has(pair) ? 'tch-dge' : null;
}

function isDoubleOf(double: string, single: string): boolean {
  return double.length === 2 && double === single + single;
}

const HARD_C: ReadonlySet<string> = new Set(['c', 'cc', 'ck', 'k', 'kk']);
const TRIGRAPHS: ReadonlySet<string> = new Set(['ch tch', 'dge ge', 'dge j', 'dg dge', 'dge g']);
