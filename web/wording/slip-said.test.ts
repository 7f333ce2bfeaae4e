import { describe, expect, it } from 'vitest';
import { slipSaid, slipsSaid } from './slip-said.ts';

const shortI = { kind: 'phoneme', sound: 'IH' } as const;

describe('what was heard', () => {
  it('names another sound as she writes sounds', () => {
    expect(slipSaid(shortI, 'classroom')).toBe('said /ĭ/');
    expect(slipSaid(shortI, 'ipa')).toBe('said /ɪ/');
  });

  it('is told once each with how often, the most frequent first', () => {
    const heard = [{ kind: 'left-out' }, shortI, null, shortI, shortI] as const;
    expect(slipsSaid(heard, 'classroom')).toBe('said /ĭ/ 3 times, left it out');
    expect(slipsSaid([shortI, shortI], 'classroom')).toBe('said /ĭ/ twice');
  });

  it('is nothing when nothing was said of it', () => {
    expect(slipsSaid([null, null], 'classroom')).toBe('');
  });
});
