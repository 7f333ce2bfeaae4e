import { expect, it } from 'vitest';
import { loadLexicon, loadScreen } from '../../cli/engine.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { teach } from '../sequence/teach.ts';
import { decodableWords } from './decodable.ts';
import { wordsOfCards } from './words-of-cards.ts';

const [lexicon, screen] = [loadLexicon(), loadScreen()];

it.each([8, 40, 75])(
  'words that show each card, at step %i, use what was taught and are fit to be said',
  (step) => {
    const taught = teach(SEQUENCE.steps.slice(0, step).flatMap(({ items }) => items));
    const ids = [...taught.correspondences];
    const found = wordsOfCards(ids, 2, { taught, lexicon, screen });
    const decodable = new Set(decodableWords(lexicon, taught).map((index) => lexicon.word(index)));
    const all = [...found.values()].flat();
    expect(new Set(all).size).toBe(all.length);
    for (const [id, words] of found) {
      const card = correspondenceById.get(id)!;
      const wanted = card.parts.length > 0 ? card.parts : [id];
      for (const word of words) {
        expect(decodable.has(word), word).toBe(true);
        const readings = lexicon.readings(lexicon.indexOf(word));
        expect(
          readings.some(({ cards, sounds }) => {
            const row = ` ${cards.map((one) => one.id).join(' ')} `;
            return (
              row.includes(` ${wanted.join(' ')} `) &&
              screen.judge(word, sounds).verdict === 'clear'
            );
          }),
          `${id} ${word}`,
        ).toBe(true);
        expect(word).not.toBe(card.keyword);
      }
    }
    // Nearly every card has words: those that have none stand in no common word of what was taught.
    const without = [...found.values()].filter((words) => words.length === 0);
    expect(without.length).toBeLessThan(ids.length / 5);
  },
);
