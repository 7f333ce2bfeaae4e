import { describe, expect, it } from 'vitest';
import { rises, stairPath } from './share-path.ts';

describe('the picture of shares by step', () => {
  it('is a stair from left to right that rises where a step opens words', () => {
    expect(stairPath([0, 0.5, 1])).toBe('M0 160H300V80H600V0');
  });

  it('lists only the steps that change something', () => {
    expect(rises([0.1, 0.1, 0.6, 0.6, 1])).toEqual([
      { step: 0, share: 0.1 },
      { step: 2, share: 0.6 },
      { step: 4, share: 1 },
    ]);
  });
});
