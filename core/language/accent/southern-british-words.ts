/**
 * Words that the rules of `southern-british.ts` get wrong, by what changes in them. From memory, by the sets
 * of Wells, *Accents of English*, 1982; a dictionary showed which words to look at (docs/accents.md), and no
 * line was taken from it. A word stands for its endings as well: *ask* for *asks, asked, asking*.
 */
import type { CardId } from '../card-id.ts';
import type { HereSound } from './here-sound.ts';

/** Which cards of a word are said otherwise than by rule, and how; null for most words. */
export function britishChanges(word: string): ReadonlyMap<CardId, readonly HereSound[]> | null {
  for (const base of basesOf(word)) {
    const change = byWord.get(base);
    if (change) return change;
  }
  return null;
}

/** Words, and what becomes of their cards. */
type Change = readonly [words: string, cards: Readonly<Record<CardId, string>>];

const CHANGES: readonly Change[] = [
  [
    // The a of *bath*.
    'advance advantage after afternoon afterward afterwards afterlife aghast alas answer ask avalanche bask basket ' +
      'basketball bath bathroom bathtub birdbath blast branch brass broadcast bypass cask casket cast caste castle chance chancellor ' +
      'chant clasp class classmate classroom classy command contrast craft crafty daft dance demand ' +
      'disadvantage disaster disastrous downcast draft drastic enchant enhance example fast fasten flabbergast ' +
      'flask forecast freelance gasp ghastly giraffe glance glass glasses glassy graft grant graph grasp grass ' +
      'grassy grasshopper hasp headmaster hourglass housemaster lance last mask mast master ' +
      'masterpiece nasty outcast outclass outlast overpass paragraph pass passport past pastime pastor ' +
      'pasture path pathway perchance photograph plant plaster prance raft rafter rascal rasp raspberry ' +
      'rather repast reprimand sample shaft shan slander slant staff stance steadfast task telegraph ' +
      'trance transplant trespass underpass vast aircraft spacecraft handicraft witchcraft password ' +
      'bastard footpath homeopath psychopath blanch planter implant supplant passer passerby surpass sandglass ' +
      'eyeglass wineglass flagstaff mastermind taskmaster sandblast fiberglass hovercraft upperclass ' +
      'everlasting lasting chaff',
    { 'a=AE': 'AA' },
  ],
  // The a of *father* that is short, and the short a that is long.
  ['pasta taco mafia macho kebab mantra pilaf salsa tapas', { 'a=AA': 'AE' }],
  ['banana bravado', { 'a=AE': 'AA' }],
  ['tomato', { 'a=EY': 'AA' }],
  ['vase', { 'a_e=EY': 'AA', 's=S': 'Z' }],
  ['wrath', { 'a=AE': 'OH' }],
  ['yacht', { 'a=AA': 'OH' }],
  ['suave waft schwa', { 'a=AA': 'AA' }],
  ['psalm alms', { 'a=AO': 'AA', 'l=L': '' }],
  ['water', { 'a=AA': 'AO' }],
  // A short o where the rules have another vowel.
  ['of from', { 'o=AH': 'OH' }],
  [
    'because sausage cauliflower laurel laureate auspice austere australia cauldron',
    { 'au=AO': 'OH' },
  ],
  ['cough trough', { 'ough=AO': 'OH', 'ou=AA': 'OH', 'ou=AO': 'OH' }],
  ['shone gone', { 'o_e=OW': 'OH' }],
  ['yogurt', { 'o=OW': 'OH' }],
  ['process progress', { 'o=AA': 'OW' }],
  // The vowels of *poor* and *sure*, of *area* and *carry*.
  ['apparent transparent', { 'ar=EH+R': 'AE R' }],
  ['oral floral choral storage flora aurora', { 'or=AO+R': 'AO R' }],
  ['thorough', { 'or=ER': 'AH R', 'ough=OW': 'AX' }],
  ['bury burial', { 'ur=EH+R': 'EH R' }],
  ['canary contrary vagary', { 'ar=EH+R': 'EA R' }],
  ['stirring whirring', { 'irr=ER': 'ER R' }],
  [
    'purring furry blurry occurred occurring recurring slurring spurring recurred concurred incurred',
    { 'urr=ER': 'ER R' },
  ],
  [
    'preferred referred deferred inferred conferred transferred deterred preferring referring',
    { 'err=ER': 'ER R' },
  ],
  // Other vowels.
  ['been', { 'ee=IH': 'IY' }],
  ['either neither', { 'ei=IY': 'AY' }],
  ['leisure', { 'ei=IY': 'EH', 'ea=IY': 'EH' }],
  ['zebra', { 'e=IY': 'EH' }],
  ['lever evolution devolution', { 'e=EH': 'IY' }],
  ['privacy vitamin', { 'i=AY': 'IH' }],
  ['clerk', { 'er=ER': 'AA' }],
  ['derby', { 'er=ER': 'AA' }],
  ['figure', { 'ure=Y+UH+R': 'AX' }],
  ['failure', { 'ure=Y+UH+R': 'Y AX' }],
  ['ate', { 'a_e=EY': 'EH' }],
  ['route', { 'ou=AW': 'UW' }],
  ['herb', { 'h=-': 'HH' }],
  ['schedule', { 'ch=K': '', 's=S': 'SH' }],
  [
    'hostile missile fragile fertile sterile mobile futile agile tactile versatile volatile projectile',
    { 'i=AX': 'AY', 'i=IH': 'AY', 'i_e=AX': 'AY' },
  ],
  ['lawyer', { 'aw=AO': 'OY', 'y=Y': '' }],
];

/** A word, and what it may be a form of, nearest first. */
function basesOf(word: string): readonly string[] {
  const bases = [word];
  for (const [ending, others] of ENDINGS) {
    if (!word.endsWith(ending)) continue;
    const stem = word.slice(0, -ending.length);
    if (stem.length > 2) for (const other of others) bases.push(stem + other);
  }
  return bases;
}

const ENDINGS: readonly (readonly [ending: string, instead: readonly string[]])[] = [
  ['s', ['']],
  ['es', ['', 'e']],
  ['ed', ['', 'e']],
  ['ing', ['', 'e']],
  ['ings', ['', 'e']],
  ['er', ['', 'e']],
  ['ers', ['', 'e']],
  ['est', ['', 'e']],
  ['ies', ['y']],
  ['ied', ['y']],
  ['ier', ['y']],
  ['iest', ['y']],
  ['ly', ['', 'e']],
  ['able', ['', 'e']],
];

const byWord: ReadonlyMap<string, ReadonlyMap<CardId, readonly HereSound[]>> = new Map(
  CHANGES.flatMap(([words, cards]) => {
    const change = new Map(
      Object.entries(cards).map(([id, sounds]) => [
        id as CardId,
        sounds.split(' ').filter(Boolean) as readonly HereSound[],
      ]),
    );
    return words.split(' ').map((word) => [word, change] as const);
  }),
);
