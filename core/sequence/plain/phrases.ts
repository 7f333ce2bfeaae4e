/** Plain words of the trade for what a line teaches, and what we read them as. */
interface Phrase {
  /** Matched at the start of what is left of a line; the text is in lower case. */
  readonly said: RegExp;
  /** Items in text form; empty when nothing of its own is taught. */
  readonly items: string;
  /** Said beside the line; null where the cards speak for themselves. */
  readonly note: string | null;
}

const SHORT: Readonly<Record<string, string>> = { a: 'a', e: 'e', i: 'i', o: 'o', u: 'u' };
const LONG: Readonly<Record<string, string>> = {
  a: 'a=EY',
  e: 'e=IY',
  i: 'i=AY',
  o: 'o=OW',
  u: 'u=Y+UW u=UW',
};
const ALL_LONG = Object.values(LONG).join(' ');
const SILENT_E = 'a_e e_e i_e o_e u_e u_e=Y+UW';
const CLUSTERS =
  'habit:ending-clusters habit:s-clusters habit:l-clusters habit:r-clusters habit:three-clusters';
const DOUBLED = 'bb dd gg mm nn pp tt';
const CLUSTER_WORD = '(?:blends?|clusters?)';

const phrase = (said: string, items: string, note: string | null = null): Phrase => ({
  said: new RegExp(`^(?:${said})(?![a-z'])`),
  items,
  note,
});

const byLetter = (words: string, items: Readonly<Record<string, string>>): Phrase[] =>
  Object.entries(items).map(([letter, list]) => phrase(`${words} ${letter}`, list));

const ROOT_NOTE = 'a part with a meaning: its letters are read as they were taught';

/**
 * The phrases, longer before shorter where one begins the other. What each
 * opens is what the engine checks words by: clusters, longer words, the vowel
 * that fades, and cards.
 * Common practice, no source.
 */
export const PHRASES: readonly Phrase[] = [
  phrase(
    `(?:beginning|initial|starting) ${CLUSTER_WORD}`,
    'habit:s-clusters habit:l-clusters habit:r-clusters',
    'words such as stop, flag and drum',
  ),
  phrase(
    `(?:ending|final|end) ${CLUSTER_WORD}`,
    'habit:ending-clusters',
    'words such as hand and lost',
  ),
  ...['s', 'l', 'r'].map((letter) =>
    phrase(`${letter}[- ]${CLUSTER_WORD}`, `habit:${letter}-clusters`),
  ),
  phrase(`(?:three|3)[- ](?:letter|consonant) ${CLUSTER_WORD}`, 'habit:three-clusters'),
  phrase(
    `(?:consonant )?${CLUSTER_WORD}`,
    CLUSTERS,
    'two or three consonants in a row, such as stop and hand',
  ),
  phrase(
    '(?:(?:two|2|three|3|more)[- ](?:closed )?(?:syllables?|beats?)(?: words?)?|two closed syllables|closed syllables|' +
      '(?:multi-?syllab(?:le|ic)|longer|long|compound) words?|syllable division|v?cc?v)',
    'habit:long-words',
    'words of two beats and more, such as sunset',
  ),
  phrase(
    '(?:the )?doubling(?: rule| the consonant| consonants)?|double (?:the )?(?:last |final )?(?:consonant|letter)s?',
    DOUBLED,
    'running, hopped: the two letters are one card',
  ),
  phrase(
    'drop (?:the )?(?:silent |final )?e|(?:the )?e[- ]drop(?:ping)?',
    'a=EY i=AY o=OW u=UW u=Y+UW',
    'making, hoping; words such as basic and go open too',
  ),
  phrase(
    '(?:change )?(?:the )?y (?:to|into|turns into|becomes) (?:an )?i',
    'ie=AY ie=IY',
    'cried, copies; words such as pie and brief open too',
  ),
  phrase('soft c', 'c=S ce'),
  phrase('soft g', 'g=JH ge'),
  phrase('hard c', 'c=K'),
  phrase('hard g', 'g=G'),
  phrase(
    '(?:the )?schwa|(?:the )?(?:vowel that fades|faded vowels?)',
    'habit:schwa a=AX',
    'the vowel of a weak beat fades, as in about',
  ),
  phrase(
    'flex(?:ing)?(?: the vowel)?',
    'habit:flex',
    'one faded vowel in a word of two beats, as in basket',
  ),
  phrase('short vowels', 'a e i o u'),
  phrase('(?:long vowels|open syllables?)', `${ALL_LONG} y=AY`, 'go, me, tiger'),
  ...byLetter('(?:short|closed)', SHORT),
  ...byLetter('(?:long|open)', LONG),
  phrase('(?:silent|magic|final|sneaky)[- ]e|v-?c-?e|vowel[- ]consonant[- ]e', SILENT_E),
  phrase('consonant[- ]le|c-?le', 'le', 'table'),
  phrase('(?:consonant )?digraphs', 'sh ch th th=DH wh ck ng'),
  phrase('floss(?: words| rule)?', 'ff ll ss zz'),
  phrase('r[- ]controlled(?: vowels?)?|vowels? with r', 'ar or er ir ur'),
  phrase(
    '(?:the )?alphabet|a ?(?:-|–|to) ?z',
    'a b c d e f g h i j k l m n o p qu r s t u v w x y z',
  ),
  phrase('glued (?:sounds|endings)|joined (?:sounds|endings)', 'ng nk'),
  // endings with a hyphen
  phrase('-?ed', 'ed ed=D ed=IH+D', 'the ending, with its three sounds'),
  phrase('-s', 's s=Z', 'the ending, with its two sounds'),
  phrase('-es', 'es'),
  phrase('-ing', 'ing'),
  phrase('-er', 'er'),
  phrase('-est', 'est'),
  phrase('-ly', 'l y=IY'),
  phrase('-y', 'y=IY'),
  phrase('-?tion', 'ti habit:flex', 'ti o n: the o fades'),
  phrase('-?sion', 'si si=ZH habit:flex', 'si o n: the o fades'),
  phrase('-?ture', 't=CH ure=ER', 't ure'),
  phrase('-?cial', 'ci', 'ci a l: the a fades'),
  phrase('-ous', 'ou=AX', 'famous'),
  phrase('-(?:ful|less|ness|ment|en|ish|able|ible|al|ive|ward|hood|ship)', '', ROOT_NOTE),
  phrase('(?:un|re|pre|dis|mis|in|im|de|ex|non|sub|over|under|out|up)-', '', ROOT_NOTE),
  // joined endings whose letters keep or bend their sounds
  phrase('-?all', 'a=AO ll', 'ball'),
  phrase('-?alk', 'al', 'chalk'),
  ...['ang', 'ong', 'ung'].map((joined) => phrase(`-?${joined}`, `${joined[0]} ng`)),
  ...['ank', 'ink', 'onk', 'unk'].map((joined) => phrase(`-?${joined}`, `${joined[0]} nk`)),
  phrase('-?(?:old|ost|olt|oll)', 'o=OW', 'the o is long; words such as go open too'),
  phrase('-?(?:ild|ind)', 'i=AY', 'the i is long; words such as hi open too'),
];

/** What introduces words to be known by heart. */
export const BY_HEART =
  /^(?:(?:sight|heart|irregular|tricky|memory|outlaw|high[- ]frequency|special|by heart)[- ]?words?|words? (?:by heart|by sight|to know)|by heart|words?)\s*(?:[:–—-]|$)?\s*/;

/** Words that a line may hold and that name nothing. */
export const FILLERS: ReadonlySet<string> = new Set(
  `and with new the: letter letters sound sounds spelling spellings card cards both say says says: teach
   review of: pattern patterns team teams vowel vowels consonant consonants ending endings`
    .trim()
    .split(/\s+/),
);
