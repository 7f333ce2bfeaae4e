import { itemKey, splitItems } from './item.ts';
import { itemNamed } from './item-named.ts';
import { GRADES, type Grade, type Item, type Sequence } from './sequence.ts';

/** How a sequence meets one standard by the end of its grade. */
export interface StandardCoverage {
  readonly code: string;
  readonly grade: Grade;
  /** Steps, in this grade or before, that teach something the standard asks for. */
  readonly steps: readonly number[];
  /** What it asks for that no step teaches by then. */
  readonly missing: readonly Item[];
  /** What meets it, or why it is not for an order of spellings to meet. */
  readonly note: string;
  readonly outOfScope: boolean;
}

/**
 * Common Core State Standards, kindergarten to grade 3: reading foundational
 * skills (RF) and the two language standards on spelling patterns, each with
 * the steps that meet it. The standards name kinds of spelling, not a list;
 * what each asks for is our reading of it, given in the note.
 */
export function coverStandards(sequence: Sequence): readonly StandardCoverage[] {
  return STANDARDS.map(([code, grade, note, asks]) => {
    const byThen = sequence.steps.filter(
      (step) => GRADES.indexOf(step.grade) <= GRADES.indexOf(grade),
    );
    const wanted = asks === null || asks === BY_HEART ? [] : splitItems(asks).map(itemNamed);
    const keys = new Set(wanted.map(itemKey));
    const meets = (item: Item): boolean =>
      asks === BY_HEART ? item.kind === 'word' : keys.has(itemKey(item));
    const taught = new Set(byThen.flatMap((step) => step.items.map(itemKey)));
    return {
      code,
      grade,
      note,
      outOfScope: asks === null,
      steps: byThen.filter(({ items }) => items.some(meets)).map(({ number }) => number),
      missing: wanted.filter((item) => !taught.has(itemKey(item))),
    };
  });
}

/** What a standard asks for: items in text form, words by heart, or nothing that is ours. */
type Standard = readonly [code: string, grade: Grade, note: string, asks: string | null];

const BY_HEART = 'words by heart';
const SPOKEN = 'spoken sounds without letters: daily practice, not an order of spellings';
const TEXTS = 'reading of whole texts, not an order of spellings';
const PARTS = 'the sum of its parts';

const CONSONANTS = 'b c d f g h j k l m n p qu r s t v w x y z';
const SHORT = 'a e i o u';
const LONG = 'e=IY o=OW i=AY a_e i_e o_e u_e u_e=Y+UW';
const FIRST_LONG = 'e=IY o=OW i=AY a_e u_e u_e=Y+UW';
const CLUSTERS = 'habit:ending-clusters habit:s-clusters habit:l-clusters habit:r-clusters';

const STANDARDS: readonly Standard[] = [
  ['RF.K.2', 'K', SPOKEN, null],
  ['RF.K.2.a', 'K', SPOKEN, null],
  ['RF.K.2.b', 'K', SPOKEN, null],
  ['RF.K.2.c', 'K', SPOKEN, null],
  ['RF.K.2.d', 'K', SPOKEN, null],
  ['RF.K.2.e', 'K', SPOKEN, null],
  ['RF.K.3', 'K', PARTS, null],
  ['RF.K.3.a', 'K', 'the first sound of every consonant letter', CONSONANTS],
  [
    'RF.K.3.b',
    'K',
    'short vowels by letter; of each long one a common spelling: be, go, hi, make, use (the others: RF.1.3.c)',
    `${SHORT} ${FIRST_LONG}`,
  ],
  ['RF.K.3.c', 'K', 'common words by heart, one at most steps', BY_HEART],
  [
    'RF.K.3.d',
    'K',
    'every letter in short words that differ in one sound (bat, bag)',
    `${SHORT} ${CONSONANTS}`,
  ],
  ['RF.K.4', 'K', TEXTS, null],
  ['RF.1.2', '1', SPOKEN, null],
  ['RF.1.2.a', '1', SPOKEN, null],
  ['RF.1.2.b', '1', SPOKEN, null],
  ['RF.1.2.c', '1', SPOKEN, null],
  ['RF.1.2.d', '1', SPOKEN, null],
  ['RF.1.3', '1', PARTS, null],
  ['RF.1.3.a', '1', 'two or three letters for one consonant sound', 'sh ch th th=DH wh ng ck tch'],
  [
    'RF.1.3.b',
    '1',
    'short words of every kind, clusters among them',
    `${SHORT} ${CLUSTERS} habit:three-clusters ff ll ss zz`,
  ],
  [
    'RF.1.3.c',
    '1',
    'silent e, and vowel teams for long sounds',
    'a_e e_e i_e o_e u_e ai ay ee ea oa ow igh oo',
  ],
  ['RF.1.3.d', '1', 'one vowel sound to a syllable, from two beats on', 'habit:long-words'],
  ['RF.1.3.e', '1', 'two closed syllables; y at the end', 'habit:long-words bb tt y=IY'],
  ['RF.1.3.f', '1', '-s, -es, -ed, -ing, -er', 's s=Z es ed=T ed=D ed=IH+D ng er'],
  ['RF.1.3.g', '1', BY_HEART, BY_HEART],
  ['RF.1.4.b', '1', TEXTS, null],
  ['RF.2.3', '2', PARTS, null],
  [
    'RF.2.3.a',
    '2',
    'the short and long sounds of each vowel, side by side from silent e on',
    `${SHORT} ${LONG} e_e y=AY`,
  ],
  [
    'RF.2.3.b',
    '2',
    'gliding vowels, second sounds of known teams, teams met less often',
    'oi oy ou ow=AW au aw oo=UH ea=EH ie=IY ie=AY oe ue ew ey',
  ],
  ['RF.2.3.c', '2', 'open syllables, and consonant with le', 'a=EY u=Y+UW u=UW y=IY y=AY le'],
  [
    'RF.2.3.d',
    '2',
    're-, de-, un-, ex-; -ful, -less, -ness, -ment, -ly, -er',
    'habit:schwa e=AX u=AX o=AX x=G+Z y=IY er',
  ],
  [
    'RF.2.3.e',
    '2',
    'sounds that a neighbor changes',
    'a=AA a=AO o=AH or=ER ar=AO+R c=S g=JH ea=EH ear=EH+R',
  ],
  ['RF.2.3.f', '2', BY_HEART, BY_HEART],
  ['L.2.2.d', '2', 'spellings chosen by their place', 'ck ff ll ss zz tch dge ai ay oi oy ge'],
  ['RF.3.3', '3', PARTS, null],
  [
    'RF.3.3.a',
    '3',
    'beginnings and endings are read as one piece here; their meaning is for the teacher to add',
    'e=AX u=AX o=AX x=G+Z ti si=ZH ou=AX y=IY',
  ],
  ['RF.3.3.b', '3', '-tion, -sion, -ture, -cial, -gion, -ous', 'ti si si=ZH ssi t=CH ci gi ou=AX'],
  [
    'RF.3.3.c',
    '3',
    'every kind of syllable, and the vowel that fades',
    'habit:long-words habit:schwa a=EY a_e ai ar le ti',
  ],
  ['RF.3.3.d', '3', BY_HEART, BY_HEART],
  [
    'L.3.2.f',
    '3',
    'place-based spellings, syllables, ending rules, parts with meaning',
    'ck tch dge ce ge ve le y=IY e=AX ti si ci',
  ],
];
