import { describe, expect, it, test } from 'vitest';
import { loadLexicon, loadScreen } from '../../cli/engine.ts';
import { judgeWord } from '../boards/judge/judge.ts';
import { type CardId, graphemeOf } from '../language/card-id.ts';
import { makeSounds, soundLabel } from '../language/phonemes.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { teach } from '../sequence/teach.ts';
import { withOtherReadings } from './other-readings.ts';

const taughtUpTo = (step: number) =>
  teach(SEQUENCE.steps.slice(0, step).flatMap(({ items }) => items));
const context = (step: number) => ({
  taught: taughtUpTo(step),
  lexicon: loadLexicon(),
  screen: loadScreen(),
});

function readings(cards: readonly CardId[], step: number): readonly string[] {
  const { word, sounds } = judgeWord(cards, context(step));
  return withOtherReadings({ text: word, cards, answers: [sounds] }, context(step)).answers.map(
    (answer) => makeSounds(answer),
  );
}

describe('every answer that is right', () => {
  // English says -se both ways (house, cheese), and s between a long vowel and a silent e too (case, nose).
  test.each<[string, CardId[], string[]]>([
    ['grise', ['gr=G+R', 'i_e=AY', 's=S'], ['G R AY S', 'G R AY Z']],
    ['snise', ['sn=S+N', 'i_e=AY', 's=S'], ['S N AY S', 'S N AY Z']],
    ['coase', ['c=K', 'oa=OW', 'se=Z'], ['K OW Z', 'K OW S']],
    ['ploose', ['pl=P+L', 'oo=UW', 'se=S'], ['P L UW S', 'P L UW Z']],
    ['deach', ['d=D', 'ea=IY', 'ch=CH'], ['D IY CH', 'D EH CH']],
    ['mip', ['m=M', 'i=IH', 'p=P'], ['M IH P']],
  ])('of %s', (word, cards, sounds) => {
    expect(
      cards
        .map(graphemeOf)
        .join('')
        .replace(/^(.*)(\w)_e(\w)$/, '$1$2$3e'),
    ).toBe(word);
    const found = readings(cards, 136);
    expect(found[0]).toBe(sounds[0]);
    expect([...found].sort()).toEqual(expect.arrayContaining([...sounds].sort()));
    if (word !== 'ploose') expect(found).toHaveLength(sounds.length);
  });

  it('has no sound that was not taught', () => {
    // ea of bread comes later than ea of peach.
    expect(readings(['d=D', 'ea=IY', 'ch=CH'], 56)).toEqual(['D IY CH']);
  });
});

it('are written as classrooms write them, also inside a word', () => {
  expect(soundLabel(['S', 'K', 'R', 'AO', 'R'])).toBe('/skror/');
  expect(soundLabel(['B', 'L', 'AA', 'R', 'M'])).toBe('/blarm/');
  expect(soundLabel(['K', 'Y', 'UW', 'B'])).toBe('/kūb/');
});
