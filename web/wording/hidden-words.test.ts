import { describe, expect, test } from 'vitest';
import { type Tally, tallyOf, tallyOfCounts } from '../../core/boards/judge/card-gain.ts';
import { judgeWord } from '../../core/boards/judge/judge.ts';
import { makeRowJudge } from '../../core/boards/judge/row-judge.ts';
import { cardsAt } from '../../core/boards/judge/word-table.ts';
import { cardsInPiles } from '../../core/boards/shapes/board.ts';
import { shapeById } from '../../core/boards/shapes/shape-list.ts';
import type { Shape } from '../../core/boards/shapes/shapes.ts';
import { buildDrill } from '../../core/drills/build-drill.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import type { Item } from '../../core/sequence/sequence.ts';
import { stepOf } from '../../core/sequence/step-of.ts';
import { taughtUpTo } from '../../core/sequence/teach.ts';
import { SCREEN_DATA } from '../../core/words/screen-data.ts';
import { createWordScreen } from '../../core/words/word-screen.ts';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { isFitEntry } from '../state/fit-entries.ts';
import { surveyOf } from '../state/survey.ts';
import { hiddenInWords } from './hidden-words.ts';

const screen = createWordScreen(SCREEN_DATA);
const none: Tally = { real: 9, nonsense: 9, stopped: 0, rule: 0, unfit: 0, untaught: 0 };

test.each<[Partial<Tally>, string]>([
  [{}, 'Nothing stays hidden.'],
  [{ stopped: 1 }, '1 stays hidden: 1 to regret.'],
  [{ rule: 1 }, '1 stays hidden: none to regret, 1 breaks a spelling rule.'],
  [{ stopped: 3, unfit: 9 }, '12 stay hidden: 3 to regret, 9 would mislead.'],
  [
    { rule: 2, unfit: 1, untaught: 4 },
    '7 stay hidden: none to regret, 2 break a spelling rule, 1 would mislead, 4 not taught yet.',
  ],
])('one sentence, its parts making the number: %o', (some, sentence) => {
  expect(hiddenInWords({ ...none, ...some })).toBe(sentence);
});

/** What was taught once the step has come that brings an item. */
const known = (item: Item) => taughtUpTo(SEQUENCE, stepOf(SEQUENCE, item) as number);

const boards: readonly (readonly [string, Item])[] = [
  ['closed', { kind: 'card', id: 'sh=SH' }],
  ['syllable', { kind: 'card', id: 'a_e=EY' }],
  ['open', { kind: 'card', id: 'ay=EY' }],
  ['base-ending', { kind: 'card', id: 'ing=IH+NG' }],
  ['beats', { kind: 'habit', habit: 'long-words' }],
];

describe.each(boards)('a board of the kind %s', (id, item) => {
  const taught = known(item);
  const engine = { lexicon, screen };
  const shape = shapeById.get(id) as Shape;
  const { board, run } = buildDrill({ taught, seed: 1, shape: id }, engine);
  const table = makeRowJudge(shape, { taught, ...engine }).table(board.piles);
  const judged = table.words.map((_, row) =>
    judgeWord(cardsAt(table, row), { taught, ...engine }, shape),
  );

  test('says the same of hidden words on Today, How it went and Board: each row not shown, once', () => {
    const survey = surveyOf(board, taught, engine);
    const sentence = survey && hiddenInWords(tallyOfCounts(survey));
    expect(sentence).toBe(hiddenInWords(tallyOf(table)));
    const hidden = judged.filter(({ kind }) => kind === 'stopped').length;
    expect(sentence).toMatch(hidden === 0 ? /^Nothing/ : new RegExp(`^${hidden} stay`));
  });

  test('has a run that shows none of them', () => {
    expect(run.length).toBeGreaterThan(0);
    for (const flip of run) {
      const { kind } = judgeWord(cardsInPiles(flip), { taught, ...engine }, shape);
      expect([flip.word, kind]).toEqual([flip.word, flip.kind]);
    }
  });

  test('hides a listed word, read as it is said, just where Find words leaves it out', () => {
    for (const { word, sounds, kind, ...rest } of judged) {
      const index = lexicon.indexOf(word);
      if (index < 0) continue;
      const isFit = isFitEntry([index], false, engine);
      if (kind === 'real') expect([word, isFit]).toEqual([word, true]);
      const isScreened = 'reason' in rest && rest.reason.code === 'screened';
      const isSaidSo = lexicon.readings(index).some((own) => `${own.sounds}` === `${sounds}`);
      if (isScreened && isSaidSo) expect([word, isFit]).toEqual([word, false]);
    }
  });
});

test('mild words are hidden on the board and in Find words alike, their neighbors in neither', () => {
  const taught = taughtUpTo(SEQUENCE, Infinity);
  const shape = shapeById.get('closed') as Shape;
  const words = (['h=HH', 'b=B', 'k=K'] as const).flatMap((first) =>
    (['e=EH', 'i=IH'] as const).map((vowel) =>
      judgeWord([first, vowel, 'll=L'], { taught, lexicon, screen }, shape),
    ),
  );
  const shown = words.flatMap(({ word, kind }) => (kind === 'real' ? [word] : []));
  expect(shown).toEqual(['hill', 'bell', 'bill']);
  const found = words.flatMap(({ word }) => {
    const index = lexicon.indexOf(word);
    return index >= 0 && isFitEntry([index], false, { lexicon, screen }) ? [word] : [];
  });
  expect(found).toEqual(shown);
});
