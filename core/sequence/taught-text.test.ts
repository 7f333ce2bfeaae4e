import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Taught } from '../language/taught.ts';
import { SEQUENCE } from './built-in.ts';
import { type ParsedTaught, parseTaught, parseTaughtJson } from './taught-text.ts';
import { taughtUpTo } from './teach.ts';

function taughtIn(parsed: ParsedTaught): Taught {
  if ('error' in parsed) throw new Error(parsed.error.message);
  return parsed.taught;
}

const list = (text: string): Taught => taughtIn(parseTaught(text, SEQUENCE));
const json = (value: unknown): ParsedTaught => parseTaughtJson(JSON.stringify(value), SEQUENCE);

describe('a step', () => {
  test('teaches all up to it', () => {
    for (const step of [0, 1, 24, SEQUENCE.steps.length]) {
      expect(list(`step:${step}`)).toEqual(taughtUpTo(SEQUENCE, step));
    }
  });

  test.each(['step:', 'step:-1', 'step:2.5', 'step:x', 'step:9999'])('%s is none', (text) => {
    expect(parseTaught(text, SEQUENCE)).toMatchObject({
      error: { code: 'unknown-step', item: text },
    });
  });
});

describe('a list', () => {
  test('names cards by their first sound or in full', () => {
    expect([...list('a,m,s,t,sh,ea=EH').correspondences]).toEqual([
      'a=AE',
      'm=M',
      's=S',
      't=T',
      'sh=SH',
      'ea=EH',
    ]);
  });

  test('may have spaces, repeats and capitals', () => {
    expect(list(' A, m ,m ; ea = EH ')).toEqual(list('a,m,ea=EH'));
  });

  test('a cluster card brings its letters', () => {
    expect([...list('st').correspondences].sort()).toEqual(['s=S', 'st=S+T', 't=T']);
    expect([...list('nk').correspondences].sort()).toEqual(['k=K', 'n=NG', 'nk=NG+K']);
  });

  test('takes the habits of length for granted, schwa only when it is named', () => {
    const { habits } = list('a,m');
    expect(habits.has('long-words') && habits.has('s-clusters')).toBe(true);
    expect(habits.has('schwa')).toBe(false);
    expect(list('a,habit:schwa').habits.has('schwa')).toBe(true);
    expect(list('a,schwa').habits.has('schwa')).toBe(true);
  });

  test('holds irregular words', () => {
    expect([...list('a,word:said').irregularWords]).toEqual(['said']);
  });

  test('an unknown item is named, with near misses, and nothing else comes back', () => {
    const parsed = parseTaught('a,m,hs,t', SEQUENCE);
    expect(parsed).not.toHaveProperty('taught');
    expect(parsed).toMatchObject({ error: { code: 'unknown-card', item: 'hs' } });
    expect('error' in parsed && parsed.error.nearMisses).toContain('sh');
  });

  test('an empty list is told how to write one', () => {
    expect(parseTaught(' , ', SEQUENCE)).toMatchObject({ error: { code: 'nothing-named' } });
  });

  test('no text makes it throw', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const parsed = parseTaught(text, SEQUENCE);
        expect('taught' in parsed || parsed.error.message.length > 0).toBe(true);
      }),
    );
  });
});

describe('JSON', () => {
  test('has a step with items added and dropped', () => {
    const taught = taughtIn(json({ step: 24, add: ['sh', 'word:said'], drop: ['n'] }));
    const plain = taughtUpTo(SEQUENCE, 24);
    expect(taught.correspondences.has('sh=SH')).toBe(true);
    expect(taught.correspondences.has('n=N')).toBe(false);
    expect(taught.correspondences.size).toBe(plain.correspondences.size);
    expect(taught.irregularWords.has('said')).toBe(true);
  });

  test('or a list, bare or named', () => {
    expect(taughtIn(json(['a', 'm', 'sh']))).toEqual(list('a,m,sh'));
    expect(taughtIn(json({ items: ['a', 'm', 'sh'] }))).toEqual(list('a,m,sh'));
  });

  test.each([
    [{ step: 'four' }, 'unknown-form'],
    [{ step: 9999 }, 'unknown-step'],
    [{ step: 4, add: 'sh' }, 'unknown-form'],
    [{ step: 4, plus: ['sh'] }, 'unknown-form'],
    [{ step: 4, add: ['hs'] }, 'unknown-card'],
    [{ step: 4, drop: ['habit:shwa'] }, 'unknown-habit'],
    [{ items: ['a'], step: 4 }, 'unknown-form'],
    [['a', 4], 'unknown-form'],
    [[], 'nothing-named'],
    [null, 'unknown-form'],
    [{}, 'unknown-form'],
  ])('%j is told what is wrong', (value, code) => {
    expect(json(value)).toMatchObject({ error: { code } });
  });

  test('text that is no JSON is told so', () => {
    expect(parseTaughtJson('{step:24}', SEQUENCE)).toMatchObject({ error: { code: 'not-json' } });
  });
});
