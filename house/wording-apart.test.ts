import { describe, expect, it } from 'vitest';
import { wordsInMarkup } from './wording-apart.ts';

describe('words in markup', () => {
  it.each([
    ['<p>Nothing broke.</p>', 1],
    ['<p aria-label="The day" />', 1],
    ['<p>{say.day} · {count}</p>', 0],
    ['<p class="quiet small" aria-label={say.theDay}>×</p>', 0],
  ])('%s: %i', (markup, count) => {
    expect(wordsInMarkup('a.tsx', `const a = ${markup};`)).toHaveLength(count);
  });
});
