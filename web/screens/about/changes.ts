/** What changed with one version, a sentence or a few each. */
export interface Changes {
  /** The version, or `Next` for what came after the last. */
  readonly version: string;
  readonly items: readonly string[];
}

/** Reads the changelog: a version for each `## `, an item for each `- `; a line that is neither goes on with its item. */
export function parseChanges(text: string): readonly Changes[] {
  const all: { version: string; items: string[] }[] = [];
  for (const line of text.split('\n')) {
    const now = all.at(-1);
    if (line.startsWith('## ')) all.push({ version: line.slice(3).trim(), items: [] });
    else if (line.startsWith('- ')) now?.items.push(line.slice(2).trim());
    else if (line.trim() !== '' && now && now.items.length > 0) {
      now.items.push(`${now.items.pop()} ${line.trim()}`);
    }
  }
  return all;
}

/** A piece of an item: plain, set apart, or as one types it. */
export interface TextSpan {
  readonly text: string;
  readonly as: 'plain' | 'example' | 'typed';
}

/** Cuts an item at what stands between underscores or backticks. */
export function spansOf(item: string): readonly TextSpan[] {
  return item.split(/(`[^`]+`|(?<![\w])_[^_]+_(?![\w]))/).flatMap((text): readonly TextSpan[] => {
    if (text === '') return [];
    if (text.startsWith('`')) return [{ text: text.slice(1, -1), as: 'typed' }];
    const isExample = /^_[^_]+_$/.test(text);
    return [isExample ? { text: text.slice(1, -1), as: 'example' } : { text, as: 'plain' }];
  });
}
