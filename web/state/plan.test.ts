import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Drill } from '../../core/drills/drill.ts';

const drill: Drill = {
  seed: 7,
  visual: ['m=M', 'a=AE'],
  auditory: [{ phonemes: ['M'], spellings: ['m=M'] }],
  board: { shape: 'cvc', piles: [['m=M'], ['a=AE'], ['t=T']] },
  run: [{ cards: ['m=M', 'a=AE', 't=T'], word: 'mat', sounds: ['M', 'AE', 'T'], kind: 'real' }],
  shortfall: null,
  score: { reached: 3, floor: 1, bound: 4 },
};

/** What a browser holds that made this plan before anything was told of the class. */
function shelfWith(plan: unknown) {
  const held = new Map([['sweepline.plan', JSON.stringify(plan)]]);
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, text: string) => held.set(key, text),
  };
}

const wishes = { flips: 30, realShare: 0.5 };

async function drillFrom(plan: unknown): Promise<Drill | null> {
  vi.stubGlobal('localStorage', shelfWith(plan));
  const { drill } = await import('./plan.ts');
  return drill.value;
}

describe('a plan that was remembered', () => {
  beforeEach(() => {
    vi.resetModules();
    return () => vi.unstubAllGlobals();
  });

  it('is read whole, with what its run is worth', async () => {
    expect(await drillFrom({ wishes, made: { taught: '||', drill } })).toEqual(drill);
  });

  it('is read where its run was never measured', async () => {
    const { score: _, ...unmeasured } = drill;
    expect(await drillFrom({ wishes, made: { taught: '||', drill: unmeasured } })).toEqual(
      unmeasured,
    );
  });

  it.each([
    { ...drill, run: [{ cards: ['m=M'], word: 'm' }] },
    { ...drill, auditory: [{ phonemes: ['MM'], spellings: [] }] },
    { ...drill, board: { shape: 'cvc' } },
    { ...drill, score: { reached: 'much' } },
  ])('is no plan where a part of it is not one: %#', async (broken) => {
    expect(await drillFrom({ wishes, made: { taught: '||', drill: broken } })).toBeNull();
  });
});
