import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fromRoot } from '../../../house/root.mjs';
import { namesIn } from '../../../test/guide/named.ts';
import { SCREEN_NAMES } from '../../state/screens.ts';
import { WORDS } from '../../wording/help/glossary.ts';
import { TOPICS } from '../../wording/help/topics.ts';
import { topicsWith, wordsWith } from './find-help.ts';

const PICTURES = fromRoot('web/screens/help/pictures');

describe('the help', () => {
  it('has one topic for every screen that is worked on', () => {
    const without = new Set(['reader', 'help', 'about']);
    expect(TOPICS.map(({ screen }) => screen).sort()).toEqual(
      SCREEN_NAMES.filter((screen) => !without.has(screen)).sort(),
    );
  });

  it('closes every name that it opens', () => {
    const open = TOPICS.flatMap(({ ways }) => ways).filter(
      (way) => way.split('*').length % 2 === 0,
    );
    expect(open).toEqual([]);
  });

  it('lists the words in the order of the alphabet', () => {
    expect(WORDS).toEqual([...WORDS].sort((one, other) => one.localeCompare(other, 'en')));
  });

  it.each([
    ['', TOPICS.length, WORDS.length],
    ['Clusters', 0, 0],
    ['cluster', 2, 1],
    ['SUBSTITUTE', 1, 0],
    ['you’re', 0, 0],
    ['three piles', 0, 1],
    ['piles three', 0, 1],
  ])('finds for “%s” so many topics and words', (sought, topics, words) => {
    expect([topicsWith(sought).length, wordsWith(sought).length]).toEqual([topics, words]);
  });
});

describe('the pictures of the guide', () => {
  it('are there for every topic, small, and for nothing else', () => {
    const files = readdirSync(PICTURES).filter((file) => file.endsWith('.webp'));
    expect(files.sort()).toEqual(TOPICS.map(({ screen }) => `${screen}.webp`).sort());
    for (const file of files)
      expect(statSync(`${PICTURES}/${file}`).size, file).toBeLessThan(30_000);
  });

  it('were taken when the help named what it names now; if not: npm run guide', () => {
    expect(existsSync(`${PICTURES}/names.json`)).toBe(true);
    const taken = JSON.parse(readFileSync(`${PICTURES}/names.json`, 'utf8'));
    expect(taken).toEqual(Object.fromEntries(TOPICS.map((each) => [each.screen, namesIn(each)])));
  });
});
