import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { SEQUENCE } from './built-in.ts';
import { GRADES, type Grade } from './sequence.ts';
import { coverStandards } from './standards.ts';

// Common Core State Standards (2010), as in test/fixtures/ccss.tsv: grade, code, text, source.
const published = readFileSync(new URL('../../test/fixtures/ccss.tsv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split('\t') as [grade: string, code: string, text: string, source: string]);

const coverage = coverStandards(SEQUENCE);
const endOf = (grade: Grade): number =>
  SEQUENCE.steps.findLast((step) => step.grade === grade)?.number ?? 0;

describe('Common Core standards, kindergarten to grade 3', () => {
  test('each one of the published table is accounted for once, in its grade', () => {
    const ours = coverage.map(({ code, grade }) => `${grade} ${code}`).sort();
    expect(ours).toEqual(published.map(([grade, code]) => `${grade} ${code}`).sort());
  });

  // A phonics standard: phonics and word recognition with a letter of its own, or a spelling pattern.
  test.each(
    published
      .map(([grade, code]) => [code, grade] as const)
      .filter(([code]) => /^RF\.[K123]\.3\.[a-g]$|^L\./.test(code)),
  )('%s is met by the end of grade %s', (code, grade) => {
    const found = coverage.find((one) => one.code === code);
    expect(found?.outOfScope).toBe(false);
    expect(found?.missing).toEqual([]);
    expect(found?.steps.length).toBeGreaterThan(0);
    const latest = Math.max(...(found?.steps ?? [Number.POSITIVE_INFINITY]));
    expect(latest).toBeLessThanOrEqual(endOf(grade as Grade));
  });

  test('what is out of scope says why and claims no step', () => {
    for (const { outOfScope, note, steps } of coverage) {
      expect(note.length).toBeGreaterThan(5);
      if (outOfScope) expect(steps).toEqual([]);
    }
  });

  test('an order that teaches nothing meets none', () => {
    const none = coverStandards({ name: 'Empty', steps: [] });
    expect(none.every(({ steps }) => steps.length === 0)).toBe(true);
    const asked = none.filter(({ missing }) => missing.length > 0).map(({ grade }) => grade);
    expect(new Set(asked)).toEqual(new Set(GRADES));
  });
});
