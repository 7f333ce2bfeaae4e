import type { Phoneme } from '../../core/language/phonemes.ts';
import { heard } from '../../core/words/screen-ear.ts';
import type { ScreenKey, ScreenMark } from '../../core/words/screen-format.ts';
import { lettersExactly, lettersSeen } from '../../core/words/screen-letters.ts';
import type { HarmlessRow, ScreenRow } from './list.ts';
import { readOut, slipsOf } from './slips.ts';

/** The keys under which the reviewed rows and the harmless words are stored. */
export function screenKeys(
  rows: readonly ScreenRow[],
  harmless: readonly HarmlessRow[],
): readonly ScreenKey[] {
  return [...rows.flatMap(keysOfRow), ...harmless.flatMap(keysOfHarmless)];
}

function keysOfRow(row: ScreenRow): readonly ScreenKey[] {
  const { category, scope } = row;
  const mark: ScreenMark = { verdict: row.severity === 'ask' ? 'ask' : 'stop', category, scope };
  const letters = codes(lettersSeen, row.spelling);
  const keys: ScreenKey[] = [{ codes: letters, space: 'letters', mark }];
  if (scope === 'edge') keys.push({ codes: letters, space: 'letter-halves', mark });
  const grave = { severe: row.severity === 'severe', slur: category === 'slur' };
  for (const sounds of row.sounds) {
    keys.push({ codes: codes(heard.plain, sounds), space: 'plain', mark });
    if (scope === 'edge') keys.push({ codes: codes(heard.full, sounds), space: 'halves', mark });
    if (row.severity === 'ask') continue;
    for (const slip of slipsOf(sounds, grave)) {
      keys.push({ codes: codes(heard.plain, slip), space: 'slips', mark });
    }
    for (const said of readOut(sounds, grave.severe)) {
      const whole: ScreenMark = { ...mark, scope: 'exact' };
      keys.push({ codes: codes(heard.plain, said), space: 'slips', mark: whole });
    }
  }
  return keys;
}

function keysOfHarmless({ spelling, sounds }: HarmlessRow): readonly ScreenKey[] {
  const said = sounds.map((one) => codes(heard.plain, one));
  return [
    { codes: codes(lettersExactly, spelling), space: 'harmless-letters', mark: null },
    ...said.map((one) => ({ codes: one, space: 'harmless-sounds', mark: null }) as const),
  ];
}

function codes<Word extends string | readonly Phoneme[]>(
  read: (word: Word, out: Uint8Array) => number,
  word: Word,
): readonly number[] {
  const out = new Uint8Array(64);
  return [...out.subarray(0, read(word, out))];
}
