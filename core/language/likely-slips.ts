/**
 * What is likely heard instead, when a card breaks: what a teacher can say with
 * a second touch, the likely first.
 *
 * Where the order comes from. Beginners' misread consonants are near the right
 * ones in sound; their misread vowels are not, but come from the letters
 * (Fowler, Liberman & Shankweiler, "On interpreting the error pattern in
 * beginning reading", Language and Speech 20, 1977). So for consonants the
 * neighbors in sound are offered, for vowels also the other sounds of the same
 * letters. Which consonants are neighbors: voicing or place apart (Miller &
 * Nicely, JASA 27, 1955); which short vowels: side by side in the vowel loop
 * (Peterson & Barney, JASA 24, 1952). Reversible letters, letter names, dropped
 * sounds and added vowels are offered by common practice, no source; so is what
 * comes before what.
 */
import { type CardId, isSightId } from './card-id.ts';
import { type Correspondence, isVowelCard } from './correspondence.ts';
import { correspondenceById, correspondencesByGrapheme } from './correspondences.ts';
import { isVowelPhoneme, type Phoneme } from './phonemes.ts';

/** What was heard instead of a card: another sound, or what the name says. */
export type LikelySlip =
  | { readonly kind: 'phoneme'; readonly sound: Phoneme }
  /** One letter of a card of several sounds, by its own card's id. */
  | { readonly kind: 'letter'; readonly card: CardId }
  | { readonly kind: Exclude<(typeof WAYS)[number], 'phoneme'> };

const WAYS = [
  'phoneme',
  'letter-name',
  'left-out',
  'added-vowel',
  'swapped',
  'another-word',
  'sounded-out',
  'nothing',
  'other',
] as const;

/** How a card is asked for: shown alone, by its sound, or in a row to be blended. */
export type Asked = 'visual' | 'auditory' | 'blending';

/** So many other sounds are offered at most. */
const SOUNDS = 4;

/** The likely slips on a card, the likeliest first, none twice, `other` last; at most nine. */
export function likelySlips(id: CardId, asked: Asked): readonly LikelySlip[] {
  if (isSightId(id)) return asked === 'auditory' ? SIGHT_SPELLED : SIGHT_READ;
  const card = correspondenceById.get(id);
  if (!card) return ways('left-out', 'nothing', 'other');
  if (card.parts.length > 1) {
    const letters = card.parts.map((part): LikelySlip => ({ kind: 'letter', card: part }));
    return [...letters, ...ways('left-out', 'added-vowel', 'swapped', 'other')];
  }
  const sounds = otherSounds(card, asked)
    .slice(0, SOUNDS)
    .map((sound): LikelySlip => ({ kind: 'phoneme', sound }));
  if (asked === 'auditory') return [...ways('left-out'), ...sounds, ...ways('other')];
  const named = hasName(card) ? ways('letter-name') : [];
  const vowelAdded = isVowelCard(card) ? [] : ways('added-vowel');
  if (asked === 'visual') return [...sounds, ...named, ...vowelAdded, ...ways('nothing', 'other')];
  return [...sounds, ...ways('left-out'), ...vowelAdded, ...named, ...ways('other')];
}

/** The likely slips on a whole word, where the sounds were right or no one card broke. */
export const WORD_SLIPS: readonly LikelySlip[] = ways(
  'another-word',
  'left-out',
  'added-vowel',
  'swapped',
  'nothing',
  'other',
);

/** The likely slips on a word known by sight: read, and spelled, where a letter is left out or two change places. */
const SIGHT_READ = ways('another-word', 'sounded-out', 'nothing', 'other');
const SIGHT_SPELLED = ways(
  'sounded-out',
  'left-out',
  'swapped',
  'another-word',
  'nothing',
  'other',
);

function otherSounds(card: Correspondence, asked: Asked): readonly Phoneme[] {
  const looks = asked === 'auditory' ? [] : (lookAlikes.get(card.grapheme) ?? []);
  const sounds = soundAlikes(card);
  const letters = asked === 'auditory' ? [] : sameLetters(card);
  const likely =
    card.kind === 'short-vowel' ? [...sounds, ...letters] : [...looks, ...letters, ...sounds];
  const right = new Set<Phoneme>(card.phonemes);
  const named = asked !== 'auditory' && hasName(card) ? nameOf.get(card.grapheme) : undefined;
  return [...new Set(likely)].filter((sound) => !right.has(sound) && sound !== named);
}

/** The neighbors of its first sound; of a welded or r-controlled card, of its vowel. */
function soundAlikes({ phonemes, kind }: Correspondence): readonly Phoneme[] {
  if (kind === 'cluster') return [];
  const heart = phonemes.find(isVowelPhoneme) ?? phonemes[0];
  if (kind === 'r-vowel') return ['ER', 'AO', 'AA'];
  return heart === undefined ? [] : neighbors[heart];
}

/** What else the same letters say, early sounds first; for a long vowel, its letter's short sound. */
function sameLetters(card: Correspondence): readonly Phoneme[] {
  const { grapheme, kind, parts } = card;
  if (parts.length > 0) return [];
  const long = kind === 'silent-e' || kind === 'long-vowel' || kind === 'r-vowel';
  const short = long ? shortSound.get(grapheme[0] as string) : undefined;
  const others = (correspondencesByGrapheme.get(grapheme) ?? [])
    .filter((other) => other.tier < 4 && isVowelCard(other) === isVowelCard(card))
    .filter(({ phonemes }) => phonemes.length === 1 && phonemes[0] !== 'AX')
    .map(({ phonemes }) => phonemes[0] as Phoneme);
  return short ? [short, ...others] : others;
}

/** Whether a card is one letter, whose name may be said in place of its sound. */
function hasName({ grapheme, kind }: Correspondence): boolean {
  return grapheme.length === 1 && kind !== 'long-vowel';
}

function ways(
  ...kinds: readonly Exclude<LikelySlip['kind'], 'phoneme' | 'letter'>[]
): LikelySlip[] {
  return kinds.map((kind) => ({ kind }));
}

const shortSound: ReadonlyMap<string, Phoneme> = new Map([
  ['a', 'AE'],
  ['e', 'EH'],
  ['i', 'IH'],
  ['o', 'AA'],
  ['u', 'AH'],
  ['y', 'IH'],
]);

/** The names of letters that are a single sound: said, they are the name. */
const nameOf: ReadonlyMap<string, Phoneme> = new Map([
  ['a', 'EY'],
  ['e', 'IY'],
  ['i', 'AY'],
  ['o', 'OW'],
]);

/** What is said for letters that look like others: turned, mirrored, or one stroke apart. */
const lookAlikes: ReadonlyMap<string, readonly Phoneme[]> = new Map<string, readonly Phoneme[]>([
  ['b', ['D', 'P']],
  ['d', ['B', 'P']],
  ['p', ['B', 'D']],
  ['qu', ['P', 'G']],
  ['g', ['JH', 'K']],
  ['m', ['N', 'W']],
  ['n', ['M', 'HH']],
  ['h', ['N', 'B']],
  ['w', ['M', 'V']],
  ['v', ['W', 'Y']],
  ['y', ['V', 'W']],
  ['f', ['T']],
  ['t', ['F']],
  ['j', ['G']],
  ['l', ['IH']],
]);

/** The nearest sounds of each sound, nearest first. */
const neighbors: Readonly<Record<Phoneme, readonly Phoneme[]>> = {
  AA: ['AH', 'AO'],
  AE: ['EH', 'AH'],
  AH: ['AA', 'UH'],
  AO: ['AA', 'OW'],
  AW: ['OW', 'AO'],
  AX: ['AH', 'IH'],
  AY: ['IH', 'EY'],
  EH: ['IH', 'AE'],
  ER: ['AO', 'AH'],
  EY: ['EH', 'IY'],
  IH: ['EH', 'IY'],
  IY: ['IH', 'EY'],
  OW: ['AO', 'AA'],
  OY: ['AO', 'OW'],
  UH: ['UW', 'AH'],
  UW: ['UH', 'OW'],
  B: ['P', 'D'],
  CH: ['SH', 'JH'],
  D: ['T', 'B'],
  DH: ['TH', 'V', 'D'],
  F: ['TH', 'V'],
  G: ['K', 'D'],
  HH: ['F'],
  JH: ['CH', 'G'],
  K: ['G', 'T'],
  L: ['R', 'W'],
  M: ['N'],
  N: ['M', 'NG'],
  NG: ['N'],
  P: ['B', 'T'],
  R: ['W', 'L'],
  S: ['Z', 'SH'],
  SH: ['S', 'CH'],
  T: ['D', 'P'],
  TH: ['F', 'DH', 'S'],
  V: ['F', 'B'],
  W: ['R', 'V'],
  Y: ['JH'],
  Z: ['S', 'ZH'],
  ZH: ['Z', 'SH'],
};
