import { expect, test } from 'vitest';
import {
  type Check,
  isEither,
  isFlag,
  isListOf,
  isNullOr,
  isNumber,
  isObject,
  isOneOf,
  isOptional,
  isShape,
  isText,
  isWhole,
} from './is-value.ts';

const isPoint = isShape<{ readonly x: number; readonly y?: number | undefined }>({
  x: isNumber,
  y: isOptional(isNumber),
});

test.each<
  [name: string, check: Check<unknown>, are: readonly unknown[], areNot: readonly unknown[]]
>([
  ['text', isText, ['', 'a'], [1, null, undefined, ['a']]],
  ['a flag', isFlag, [true, false], [0, 'true', null]],
  ['a number', isNumber, [0, -1.5], [Number.NaN, Number.POSITIVE_INFINITY, '1', null]],
  ['whole from 1 to 9', isWhole(1, 9), [1, 5, 9], [0, 10, 1.5, '1', Number.NaN, null]],
  ['whole from 0', isWhole(0), [0, 2 ** 53 - 1], [-1, 2 ** 53]],
  ['one of a and b', isOneOf(['a', 'b']), ['a', 'b'], ['c', '', null, ['a']]],
  ['text or null', isNullOr(isText), [null, 'a'], [undefined, 1]],
  ['text or nothing', isOptional(isText), [undefined, 'a'], [null, 1]],
  [
    'a list of texts',
    isListOf(isText),
    [[], ['a', 'b']],
    [['a', 1], [1, 'a'], 'a', null, { 0: 'a' }],
  ],
  ['an object', isObject, [{}, { a: 1 }], [[], null, 'a', undefined]],
  [
    'a point',
    isPoint,
    [{ x: 1 }, { x: 1, y: 2 }, { x: 1, z: 'more' }],
    [{}, { y: 2 }, { x: 1, y: 'a' }, { x: 1, y: null }, [1], null],
  ],
  ['text or flag', isEither(isText, isFlag), ['a', true], [1, null]],
])('what is %s, and what is not', (_, check, are, areNot) => {
  for (const value of are) expect([value, check(value)]).toEqual([value, true]);
  for (const value of areNot) expect([value, check(value)]).toEqual([value, false]);
});
