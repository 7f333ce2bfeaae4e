import { parse } from 'valibot';
import { describe, expect, it } from 'vitest';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { dictated, newestTaught } from './dictation-made.ts';

it('a word that was remembered when its card had its earlier name keeps it', () => {
  const before = [{ text: 'ship', isNew: false, practises: 'sh=SH' }];
  expect(parse(dictated, before)).toEqual([{ text: 'ship', isNew: false, practices: 'sh=SH' }]);
});

const at = (upTo: number) => ({ sequence: SEQUENCE, upTo, added: [], dropped: [] });

describe('what was taught last', () => {
  it('is what the last step brought', () => {
    expect(newestTaught(at(31))).toEqual(SEQUENCE.steps[30]?.items);
  });

  it('is the step before where all of the last one was taken out', () => {
    const dropped = SEQUENCE.steps[30]?.items ?? [];
    expect(newestTaught({ ...at(31), dropped })).toEqual(SEQUENCE.steps[29]?.items);
  });

  it('is what she added where no step was taught', () => {
    const added = [{ kind: 'card', id: 'sh=SH' } as const];
    expect(newestTaught({ ...at(0), added })).toEqual(added);
  });
});
