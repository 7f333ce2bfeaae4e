import { isVowelPhoneme, type Phoneme } from '../phonemes.ts';
import { type Accent, isBritish } from './accent.ts';
import { isFadingEnd, mergeSounds } from './sounds-here.ts';

/** So many ways are looked at, at most; a word of one syllable has a handful. */
const MOST = 64;

/**
 * All American sounds that are heard in a class as these are, these first: of *pin* also *pen* where the
 * two are alike. So a word can be looked for in a list of American sounds. The way back from `soundsHere`.
 */
export function alsoHeard(
  sounds: readonly Phoneme[],
  accent: Accent,
): readonly (readonly Phoneme[])[] {
  if (accent.length === 0) return [sounds];
  let rows: (readonly Phoneme[])[] = [[]];
  const merged = mergeSounds(sounds, accent);
  merged.forEach((sound, at) => {
    const choices = choicesFor(sound, at, merged, accent);
    if (choices) rows = rows.flatMap((row) => choices.map((choice) => [...row, ...choice]));
    else rows = rows.map((row) => [...row, sound]);
    rows.length = Math.min(rows.length, MOST);
  });
  const own = sounds.join(' ');
  return [sounds, ...rows.filter((row) => row.join(' ') !== own)];
}

/** What a sound may have been before it was heard here; null for itself alone. */
function choicesFor(
  sound: Phoneme,
  at: number,
  sounds: readonly Phoneme[],
  accent: Accent,
): readonly (readonly Phoneme[])[] | null {
  const next = sounds[at + 1];
  const has = (habit: Accent[number]) => accent.includes(habit);
  const ways = new Set<Phoneme>([sound]);
  if (has('cot-caught') && sound === 'AA' && next !== 'R') ways.add('AO');
  if (has('pin-pen') && sound === 'IH' && (next === 'M' || next === 'N')) ways.add('EH');
  if (has('pull-pool') && sound === 'UH' && next === 'L') ways.add('UW');
  if (has('fill-feel') && sound === 'IH' && next === 'L') ways.add('IY');
  if (has('th-fronted') && sound === 'F') ways.add('TH');
  if (has('th-fronted') && sound === 'V' && at > 0) ways.add('DH');
  if (isBritish(accent) && isFadingEnd(sounds, at)) ways.add('AX').add('ER');
  const choices = [...ways].map((way) => [way]);
  const mayDropR = next !== 'R' && !(next && isVowelPhoneme(next));
  if (has('r-dropped') && isVowelPhoneme(sound) && mayDropR) {
    return choices.flatMap((choice) => [choice, [...choice, 'R' as const]]);
  }
  if (isBritish(accent) && (sound === 'AO' || sound === 'UH')) {
    const hasR = next === 'R' && !isVowelPhoneme(sounds[at + 2] ?? 'R');
    if (sound === 'AO' && mayDropR) return [['AO'], ['AO', 'R'], ['UH', 'R']];
    if (hasR) return [['AO'], ['UH']];
  }
  if (isBritish(accent) && sound === 'R' && at > 0 && !(next && isVowelPhoneme(next))) {
    return /^(AO|UH)$/.test(sounds[at - 1] as string) ? [['R'], []] : null;
  }
  return choices.length > 1 ? choices : null;
}
