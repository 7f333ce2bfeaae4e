import { type CardId, soundsOf } from './card-id.ts';
import type { RowSpec } from './row.ts';
import type { Habit } from './taught.ts';

/**
 * Cluster cards: several consonants on one card, each keeping its own sound,
 * grouped by the habit that a child needs to read them; and nk, the welded
 * sibling of ng. Initial clusters are those that English allows (Hayes &
 * Wilson 2008); final ones follow the coda tables of Yavaş, Applied English
 * Phonology.
 */
export interface ClusterFamily {
  readonly habit: Habit;
  readonly place: 'beginning' | 'ending';
  readonly letters: readonly string[];
}

export const CLUSTER_FAMILIES: readonly ClusterFamily[] = [
  {
    habit: 'ending-clusters',
    place: 'ending',
    letters: [
      'ct',
      'ft',
      'ld',
      'lf',
      'lk',
      'lm',
      'lp',
      'lt',
      'mp',
      'nch',
      'nd',
      'nt',
      'pt',
      'sk',
      'sp',
      'st',
      'xt',
    ],
  },
  {
    habit: 's-clusters',
    place: 'beginning',
    letters: ['sc', 'sk', 'sl', 'sm', 'sn', 'sp', 'st', 'sw'],
  },
  { habit: 'l-clusters', place: 'beginning', letters: ['bl', 'cl', 'fl', 'gl', 'pl'] },
  {
    habit: 'r-clusters',
    place: 'beginning',
    letters: ['br', 'cr', 'dr', 'fr', 'gr', 'pr', 'tr', 'tw'],
  },
  {
    habit: 'three-clusters',
    place: 'beginning',
    letters: ['scr', 'shr', 'spl', 'spr', 'squ', 'str', 'thr'],
  },
];

/** Splits the letters of a cluster into the correspondences it carries. */
const parts: Readonly<Record<string, CardId>> = {
  b: 'b=B',
  c: 'c=K',
  d: 'd=D',
  f: 'f=F',
  g: 'g=G',
  k: 'k=K',
  l: 'l=L',
  m: 'm=M',
  n: 'n=N',
  p: 'p=P',
  r: 'r=R',
  s: 's=S',
  t: 't=T',
  w: 'w=W',
  x: 'x=K+S',
  ch: 'ch=CH',
  sh: 'sh=SH',
  th: 'th=TH',
  qu: 'qu=K+W',
};

function partsOf(letters: string): readonly CardId[] {
  return (letters.match(/ch|sh|th|qu|[a-z]/g) ?? []).map((letter) => parts[letter] as CardId);
}

function clusterRow(letters: string, places: 'b' | 'e' | 'be'): RowSpec {
  const ids = partsOf(letters);
  const sounds = ids.flatMap(soundsOf).join(' ');
  return [letters, sounds, 'cluster', 1, places, null, { parts: ids }];
}

const placesByLetters = new Map<string, 'b' | 'e' | 'be'>();
for (const { place, letters } of CLUSTER_FAMILIES) {
  const letter = place === 'beginning' ? 'b' : 'e';
  for (const cluster of letters) {
    placesByLetters.set(cluster, placesByLetters.has(cluster) ? 'be' : letter);
  }
}

export const CLUSTER_ROWS: readonly RowSpec[] = [
  ...[...placesByLetters].map(([letters, places]) => clusterRow(letters, places)),
  ['nk', 'NG K', 'welded', 1, 'e', 'skunk', { parts: ['n=NG', 'k=K'] }],
  // endings with a beat of their own, laid as one card after a base
  ['ing', 'IH NG', 'ending', 1, '', 'jumping', { parts: ['i=IH', 'ng=NG'] }],
  ['est', 'AX S T', 'ending', 2, '', 'tallest', { parts: ['e=AX', 's=S', 't=T'] }],
];
