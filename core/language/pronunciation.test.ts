import { expect, it } from 'vitest';
import { parsePronunciation } from './pronunciation.ts';

/** In the notation of the CMU Pronouncing Dictionary, which marks each vowel with its stress. */
it.each<[text: string, sounds: string | null, stress: readonly number[]]>([
  ['K AE1 T', 'K AE T', [-1, 1, -1]],
  ['  K  AE1\tT ', 'K AE T', [-1, 1, -1]],
  ['K AE T', 'K AE T', [-1, 1, -1]],
  ['AH0 B AW1 T', 'AX B AW T', [0, -1, 1, -1]],
  ['K AH1 P', 'K AH P', [-1, 1, -1]],
  ['R EY1 N K OW2 T', 'R EY N K OW T', [-1, 1, -1, -1, 2, -1]],
  ['AX B AW1 T', 'AX B AW T', [0, -1, 1, -1]],
  ['ER0 AW1 N D', 'AX R AW N D', [0, -1, 1, -1, -1]],
  ['ER0 EY2 T', 'AX R EY T', [0, -1, 2, -1]],
  ['B EY1 K ER0', 'B EY K ER', [-1, 1, -1, 0]],
  ['B EY1 K ER0 IY0', 'B EY K ER IY', [-1, 1, -1, 0, 0]],
  ['B EY1 K ER0 Z', 'B EY K ER Z', [-1, 1, -1, 0, -1]],
  ['B ER1 D', 'B ER D', [-1, 1, -1]],
  ['K AE1 QQ', null, []],
  ['K2AE', null, []],
  ['', null, []],
  ['  ', null, []],
])('“%s” is %s', (text, sounds, stress) => {
  expect(parsePronunciation(text)).toEqual(
    sounds === null ? null : { sounds: sounds.split(' '), stress },
  );
});
