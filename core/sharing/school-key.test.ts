import { describe, expect, it } from 'vitest';
import { parseSchoolKey } from './school-key.ts';

const [sign, box] = ['s'.repeat(87), 'b'.repeat(87)];

describe('the public half of a school’s key', () => {
  it('is its two keys, whatever else stands there', () => {
    expect(parseSchoolKey(JSON.stringify({ sign, box, made: 'today' }))).toEqual({ sign, box });
  });

  it.each([
    '',
    'not JSON',
    'null',
    '[]',
    JSON.stringify({ sign }),
    JSON.stringify({ sign, box: 'short' }),
    JSON.stringify({ sign, box: 7 }),
  ])('is nothing in %j', (text) => {
    expect(parseSchoolKey(text)).toBeNull();
  });
});
