import { describe, expect, it } from 'vitest';
import type { ChildStory } from '../../../core/story/child-story.ts';
import { ENGLISH } from './english.ts';
import type { FamilyWords } from './family-words.ts';
import { SPANISH, SPANISH_STORY } from './spanish.ts';
import { storyIn } from './story-in.ts';

const story: ChildStory = {
  cards: 9,
  asked: 20,
  right: 15,
  words: 0,
  stumbled: false,
  strengths: [],
  troubles: [],
  others: 0,
  beyond: { asked: 0, right: 0, open: 0 },
};

describe('what a family reads', () => {
  const all = ({ title, steps, aboutWords, canRead, howToWrite, ...plain }: FamilyWords) =>
    [
      title('Ann'),
      ...steps('Ann'),
      aboutWords('Ann'),
      canRead('Ann'),
      howToWrite('Ann'),
      ...Object.values(plain),
    ].join(' ');

  it('never calls a child “it”, and names the child', () => {
    expect(all(ENGLISH)).not.toMatch(/\bits (teacher|family|class)\b/);
    for (const words of [ENGLISH, SPANISH]) {
      expect(words.title('Ann')).toContain('Ann');
      expect(words.steps('Ann')).toHaveLength(3);
    }
  });

  it('says of the Spanish, and of nothing else, that a machine made it', () => {
    expect(ENGLISH.machineMade).toBe('');
    expect(SPANISH.machineMade).not.toBe('');
  });

  it('leaves no English in the Spanish', () => {
    expect(all(SPANISH)).not.toMatch(/\b(the|and|word|words|read|with|say)\b/i);
  });
});

describe('the sentence on a child in Spanish', () => {
  it.each([
    [{ ...story, asked: 0, right: 0 }, 'Todavía no hay nada anotado.'],
    [story, 'Leyó bien 15 de 20 veces.'],
    [
      {
        ...story,
        strengths: [
          { family: 'short-vowel', sure: true, taught: 5, read: 5, secure: 5, right: 9, asked: 9 },
        ],
        troubles: [{ way: 'misses', sound: null, cards: ['ea=IY', 'a_e=EY'], times: 3, asked: 6 }],
      } as ChildStory,
      'Lee con seguridad las vocales cortas; estamos practicando ea, a–e.',
    ],
  ])('%#', (told, said) => {
    expect(storyIn(SPANISH_STORY, told)).toBe(said);
  });
});
