import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { builtLexicon as lexicon } from '../../test/built-lexicon.ts';
import { isSightId, makeSightId } from '../language/card-id.ts';
import { isDrill } from '../log/is-drill.ts';
import { makeRandom } from '../random.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { SCREEN_DATA } from '../words/screen-data.ts';
import { createWordScreen } from '../words/word-screen.ts';
import { buildDrill } from './build-drill.ts';
import type { DrillSpec } from './drill-spec.ts';
import { chooseSight, sightIn, sightSaid, soundKey } from './sight.ts';

const engine = { lexicon, screen: createWordScreen(SCREEN_DATA) };
const taught = taughtUpTo(SEQUENCE, 24);
const words = [...taught.irregularWords];

describe('the words known by sight of a part', () => {
  it('are the new ones first, then the wished ones, each once and only taught ones', () => {
    const practice = {
      first: [makeSightId('said'), 'sh=SH'] as const,
      next: [makeSightId('xylophone'), makeSightId('was'), makeSightId('said')],
    };
    const chosen = chooseSight(new Set(words), practice, 5, makeRandom(1));
    expect(chosen.slice(0, 2)).toEqual(['said=sight', 'was=sight']);
    expect(new Set(chosen).size).toBe(5);
    for (const id of chosen) expect(words.map(makeSightId)).toContain(id);
  });

  it('are as many as are asked for, and never more than were taught', () => {
    fc.assert(
      fc.property(fc.nat(40), fc.integer(), (count, seed) => {
        const none = { first: [], next: [] };
        const chosen = chooseSight(new Set(words), none, count, makeRandom(seed));
        expect(chosen).toHaveLength(Math.min(count, words.length));
      }),
    );
  });

  it.each([
    ['they', 'DH EY'],
    ['said', 'S EH D'],
    ['qwzzt', ''],
  ])('%s is said with its ordinary sounds', (word, sounds) => {
    const said = sightSaid(makeSightId(word), lexicon);
    expect(said.phonemes.join(' ')).toBe(sounds);
    expect(sightIn(said)).toBe(`${word}=sight`);
  });

  it('are told apart though they sound alike, from each other and from a sound', () => {
    const keys = ['to', 'two', 'i'].map((word) => soundKey(sightSaid(makeSightId(word), lexicon)));
    const sound = soundKey({ phonemes: ['AY'], spellings: ['i_e=AY'] });
    expect(new Set([...keys, sound]).size).toBe(4);
  });
});

describe('a drill with words known by sight', () => {
  const spec: DrillSpec = { taught, seed: 7 };
  const without = buildDrill(spec, engine);
  const made = buildDrill({ ...spec, sightCount: 3, sightSaidCount: 2 }, engine);

  it('has them behind the cards and behind the sounds, and is otherwise the same', () => {
    expect(made.visual.slice(0, -3)).toEqual(without.visual);
    expect(made.visual.slice(-3).every(isSightId)).toBe(true);
    expect(made.auditory.slice(0, -2)).toEqual(without.auditory);
    expect(made.auditory.slice(-2).every((sound) => sightIn(sound) !== null)).toBe(true);
    expect([made.board, made.run]).toEqual([without.board, without.run]);
  });

  it('is one that the log keeps', () => {
    expect(isDrill(JSON.parse(JSON.stringify(made)))).toBe(true);
  });

  it('takes no word to the board, though it is new or broke', () => {
    const newest = [makeSightId('said')];
    const focused = buildDrill({ ...spec, newest, focus: newest }, engine);
    expect(focused.board).toEqual(without.board);
    expect(focused.run).toEqual(without.run);
  });

  it('has none unless they are asked for', () => {
    expect(without.visual.some(isSightId)).toBe(false);
    expect(without.auditory.some((sound) => sightIn(sound) !== null)).toBe(false);
  });
});
