import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fromRoot } from '../../../house/root.mjs';
import { parseChanges, spansOf } from './changes.ts';

it('reads versions, items and lines that go on', () => {
  expect(
    parseChanges('# Changelog\n\n## Next\n\n- One\n  and more.\n- Two.\n\n## 0.1.0\n\n- All.\n'),
  ).toEqual([
    { version: 'Next', items: ['One and more.', 'Two.'] },
    { version: '0.1.0', items: ['All.'] },
  ]);
});

it.each([
  ['Plain.', [{ text: 'Plain.', as: 'plain' }]],
  [
    'Say _soft c_, type `npm start`.',
    [
      { text: 'Say ', as: 'plain' },
      { text: 'soft c', as: 'example' },
      { text: ', type ', as: 'plain' },
      { text: 'npm start', as: 'typed' },
      { text: '.', as: 'plain' },
    ],
  ],
  ['The card a_e stays.', [{ text: 'The card a_e stays.', as: 'plain' }]],
] as const)('cuts “%s”', (item, spans) => {
  expect(spansOf(item)).toEqual(spans);
});

it('finds every item of the changelog that ships', () => {
  const text = readFileSync(fromRoot('CHANGELOG.md'), 'utf8');
  const items = parseChanges(text).flatMap((each) => each.items);
  expect(items).toHaveLength(text.match(/^- /gm)?.length ?? 0);
  expect(items.length).toBeGreaterThan(20);
});
