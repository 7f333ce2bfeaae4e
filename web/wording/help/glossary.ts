/** One word of the glossary. */
interface Entry {
  readonly means: string;
  /** Whether it is Sweepline’s own word, not the trade’s. */
  readonly ours?: true;
}

/** The words of the trade and ours, as a teacher says them; in the order of the alphabet. */
export const GLOSSARY = {
  'auditory drill': {
    means:
      'The second part of the warm-up. You say a sound, the children repeat it and write every spelling of it they have learned.',
  },
  'blending drill': {
    means:
      'The third part. Three piles of cards stand side by side; children say each sound, then blend the row. One card turns, and they blend again.',
  },
  board: {
    means: 'The cards laid out in piles for blending: beginnings, vowels and endings.',
  },
  card: {
    means:
      'A spelling together with its sound, such as ai for /ā/. Two cards can show the same letters: ea in peach and ea in bread.',
  },
  'clean board': {
    ours: true,
    means:
      'A board where you can turn any card at any time: no row of it makes a word you would regret. Cards on paper need one.',
  },
  'closed syllable': {
    means: 'A syllable that ends in a consonant, so that its vowel is short: cat, bas·ket.',
  },
  cluster: {
    means:
      'Consonants side by side that each keep their own sound, as st in stop. Sweepline shows one as a wide card with faint lines.',
  },
  'consonant-le': {
    means: 'A last syllable made of a consonant and le, as in ta·ble.',
  },
  decodable: {
    means:
      'Made only of what was taught: every sound and spelling in it, or the whole word, is known.',
  },
  'dictation word': {
    means: 'A word you say and the children write. It uses only what was taught.',
  },
  digraph: {
    means: 'Two letters for one sound, as sh in ship.',
  },
  flip: {
    ours: true,
    means:
      'One word of the blending drill. From one flip to the next a single card turns: sim, sin, fin.',
  },
  growing: {
    ours: true,
    means:
      'Mostly right, but not long enough or not often enough to be sure. Shown as a half-filled square.',
  },
  'irregular word': {
    means:
      'A word with a part that no rule you taught explains, such as said. Children learn that part by heart; Sweepline dots it.',
  },
  keyword: {
    means: 'The word with a picture that helps children remember a sound: i as in igloo.',
  },
  'my turn, our turn, your turn': {
    means:
      'How to fix a slip right away: you read it, then all of you read it together, then the children read it alone.',
  },
  'nonsense word': {
    means:
      'A row of cards that can be read and means nothing, such as drea. Nobody can know it by heart, so it has to be sounded out.',
  },
  'not yet seen': {
    ours: true,
    means: 'No child has been asked yet, so nothing is claimed. Shown as a dot.',
  },
  'open syllable': {
    means: 'A syllable that ends in its vowel, so that the vowel is long: go, ta·ble.',
  },
  pin: {
    ours: true,
    means: 'A card, sound or word you pin comes up every day until you take the pin out.',
  },
  'r-controlled vowel': {
    means: 'A vowel that r changes, as ar in car.',
  },
  schwa: {
    means: 'The faded vowel of a weak syllable, as the a in about.',
  },
  secure: {
    ours: true,
    means:
      'Read right often enough, and lately enough, to count on. Shown as a full square. A card missed in one of its last three readings is never called secure.',
  },
  shaky: {
    ours: true,
    means: 'Missed often or lately: practice this first. Shown as a hatched square.',
  },
  'silent e': {
    means: 'An e you do not hear that makes the vowel before it long, as in bike.',
  },
  sound: {
    means:
      'One sound of speech, written between slashes: /sh/, /ă/. Ship has three sounds and four letters.',
  },
  step: {
    means: 'One place in the order of teaching: what is taught together, usually in a few days.',
  },
  sweep: {
    ours: true,
    means:
      'The line that glides under a row while the children blend it. You set how fast it goes.',
  },
  'visual drill': {
    means:
      'The first part of the warm-up. You show a card and say nothing; the children say its letters and its sound.',
  },
  'vowel team': {
    means: 'Letters that spell one vowel sound together, as ai in rain.',
  },
  'word by sight': {
    means: 'A word children read at once, without sounding it out: the, said, was.',
  },
} as const satisfies Readonly<Record<string, Entry>>;

/** A word that the glossary explains. */
export type GlossaryWord = keyof typeof GLOSSARY;

/** What a word means, and whether it is ours. */
export function meaningOf(word: GlossaryWord): Entry {
  return GLOSSARY[word];
}

/** All of them, in order. */
export const WORDS = Object.keys(GLOSSARY) as readonly GlossaryWord[];
