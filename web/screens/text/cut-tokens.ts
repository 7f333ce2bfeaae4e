import type { Token } from '../../../core/texts/tokens.ts';

/** The tokens up to and with the `count`-th word; all of them where there are no more words. */
export function cutTokens(tokens: readonly Token[], count: number): readonly Token[] {
  let words = 0;
  const end = tokens.findIndex(({ kind }) => {
    if (kind === 'word') words += 1;
    return words > count;
  });
  return end < 0 ? tokens : tokens.slice(0, end);
}

/** Runs of tokens as they are shown: a blocked word alone, all between as one text. */
export function runsOf(
  tokens: readonly Token[],
  isBlocked: (word: string) => boolean,
): readonly { readonly text: string; readonly blocked: string | null }[] {
  const runs: { text: string; blocked: string | null }[] = [];
  for (const { kind, text, word } of tokens) {
    const last = runs.at(-1);
    if (kind === 'word' && isBlocked(word)) runs.push({ text, blocked: word });
    else if (last && last.blocked === null) last.text += text;
    else runs.push({ text, blocked: null });
  }
  return runs;
}
