import type { Phoneme } from '../../language/phonemes.ts';

/**
 * All ways in which a real word may be heard in these sounds: what is heard
 * alike, a final s in either of its sounds, and a word with -s or -ed (*lapt* is
 * lap, *hox* is hock). `last` is the last card's letters.
 */
export function heardAsWord(sounds: readonly Phoneme[], last: string): readonly string[] {
  const final = sounds.at(-1);
  const others: Phoneme[][] = [];
  if (/^(s|se)$/.test(last)) others.push([...sounds.slice(0, -1), final === 'S' ? 'Z' : 'S']);
  const ways = [sounds, ...others];
  const bases = ways.flatMap((way) => (isInflected(way) ? [way.slice(0, -1)] : []));
  return [...ways, ...bases].flatMap(heardAlike);
}

/** Whether the last sound may be the ending -s or -ed after the one before it. */
function isInflected(sounds: readonly Phoneme[]): boolean {
  const before = sounds.at(-2) ?? '';
  const last = sounds.at(-1) ?? '';
  if (before === '') return false;
  if (last === 'S') return /^(P|T|K|F|TH)$/.test(before);
  if (last === 'T') return /^(P|K|F|TH|S|SH|CH)$/.test(before);
  const voiced = !/^(P|T|K|F|TH|S|SH|CH)$/.test(before);
  if (last === 'Z') return voiced && !/^(Z|ZH|JH)$/.test(before);
  return last === 'D' && voiced && before !== 'D';
}

/** Sounds as text, and the other ways to write what is heard alike. */
export function heardAlike(sounds: readonly Phoneme[]): readonly string[] {
  let texts: string[] = [''];
  sounds.forEach((sound, at) => {
    const beforeR = sounds[at + 1] === 'R';
    const other = beforeR ? undefined : HEARD_ALIKE.get(sound);
    const choices = other ? [sound, other] : [sound];
    texts = texts.flatMap((text) => choices.map((choice) => (text ? `${text} ${choice}` : choice)));
  });
  return texts;
}

const HEARD_ALIKE: ReadonlyMap<Phoneme, Phoneme> = new Map([
  ['AA', 'AO'],
  ['AO', 'AA'],
  ['AX', 'AH'],
  ['AH', 'AX'],
]);
