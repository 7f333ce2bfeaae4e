import { assembleReading } from '../../language/assemble.ts';
import { type CardId, graphemeOf } from '../../language/card-id.ts';
import type { Reading } from '../../language/reading.ts';
import { parseItem } from '../../sequence/item.ts';

/**
 * The reading of a first name that the sentences use, or of the word *I*, by
 * its lower-case spelling; null for any other word. The word list has no names,
 * so this small table gives their cards. They are plain first names of many
 * places, and of no one in particular.
 */
export function nameReading(name: string): Reading | null {
  return readings.get(name) ?? null;
}

/** Cards in their text form; a dot stands where a syllable begins. */
const TABLE = `
  i=AY
  t o m
  p a t
  p i p
  b o b
  k e n
  j a ck
  n i ck
  r i ck
  h a n k
  j o sh
  g l e n
  j a_e d
  m i_e k
  r o_e s=Z
  j u_e n
  p e . nn y=IY
  s a m
  n e d
  n a t
  l i n
  h a l
  m e g
  t i m
  m a x
  j u n
  k i m
  d e v
  v i v
  t e ss
  j e ff
  r u ss
  r o ss
  m i ng
  s e th
  b e th
  ch e n
  d a n
  f r e d
  g r a n
  b r a d
  t r i sh
  s t a n
  j a_e k
  k a_e t
  d a_e v
  l u_e k
  m i tch
  r ee m
  i m . r a n
  m i=AY . l o=OW
  p e_e t
  o=OW . m ar
  c ar . m e n
  r oy
  p au l
  h a . n a=AX
  a . sh a=AX
  h a . ss a n
  r o=OW . s=Z a=AX
  l e=IY . n a=AX
  s a l . m a=AX
  h u=Y+UW . g o=OW
  l u=UW . c=S y=IY
  j oe
  a n . d r ew
  r a l ph
  z ar . a=AX
`;

const readings: ReadonlyMap<string, Reading> = new Map(
  TABLE.trim()
    .split('\n')
    .map((line) => readingOf(line.trim()))
    .map((reading) => [reading.word, reading]),
);

/** Throws on a card that there is not: the table is ours. */
function readingOf(line: string): Reading {
  const syllables = line.split(' . ').map((part) => part.split(' ').map(cardId));
  const lengths = syllables.map((ids) => lettersOf(ids).length);
  const breaks = lengths.slice(0, -1).map((_, index) => sum(lengths.slice(0, index + 1)));
  const ids = syllables.flat();
  return assembleReading(lettersOf(ids), ids, breaks);
}

function cardId(text: string): CardId {
  const read = parseItem(text);
  if ('error' in read || read.item.kind !== 'card') throw new Error(`No card ${text}.`);
  return read.item.id;
}

/** The letters of cards in a row; the e of a split a_e stands after the card that follows. */
function lettersOf(ids: readonly CardId[]): string {
  const letters = ids.map(graphemeOf).join(' ');
  return letters.replace(/_e (\S+)/g, '$1e').replaceAll(' ', '');
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
