import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fromRoot } from './root.mjs';
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

it('nothing is said in the markup: the sentences stand together in wording.ts', () => {
  const web = fromRoot('web');
  const faults = readdirSync(web, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.tsx'))
    .flatMap((file) => wordsInMarkup(file, readFileSync(`${web}/${file}`, 'utf8')));
  expect(faults).toEqual([]);
});
