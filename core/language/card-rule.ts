/**
 * The one spelling rule that a teacher says when she shows a card: the sentence of the spelling rule
 * that concerns it, or else of its kind. For the backs of printed cards.
 */
import type { Correspondence, Kind } from './correspondence.ts';
import { SPELLING_RULES } from './spelling-rules.ts';

/** The rule to say with a card, as a sentence; null where there is none worth saying. */
export function cardRule({ id, grapheme, kind }: Correspondence): string | null {
  const rule = ruleOf.get(id) ?? ruleOf.get(grapheme);
  return (rule && (said.get(rule) ?? whyOf.get(rule))) ?? kindRules[kind] ?? null;
}

/** Rules by the cards they concern, an id where only one sound of the letters is meant. */
const cardsOfRule: Readonly<Record<string, readonly string[]>> = {
  'c-before-e-i-y': ['k=K'],
  'k-before-e-i-y-only': ['c=K'],
  'soft-c-before-e-i-y': ['c=S'],
  'soft-g-before-e-i-y': ['g=JH'],
  'qu-before-u': ['qu=K+W'],
  'wh-before-a-e-i': ['wh=W'],
  'voiced-th-first': ['th=DH'],
  'first-only': ['kn', 'wr', 'gn'],
  'or-after-w': ['or=ER'],
  'ar-after-w': ['ar=AO+R'],
  'a-after-w': ['a=AA'],
  'a-before-l': ['a=AO', 'al=AO'],
  'long-u-without-y': ['u_e=UW', 'ue=UW', 'ew=UW'],
  'long-u-with-y': ['u_e=Y+UW', 'ue=Y+UW', 'ew=Y+UW'],
  'short-vowel-closed': ['a=AE', 'e=EH', 'i=IH', 'o=AA', 'u=AH'],
  'long-vowel-open': ['a=EY', 'e=IY', 'i=AY', 'o=OW', 'u=Y+UW', 'u=UW', 'y=AY'],
  'team-inside': ['ai=EY', 'oi=OY', 'oa=OW', 'au=AO', 'ou=AW'],
  'team-last': ['ay=EY', 'oy=OY', 'oe=OW', 'ie=AY'],
  'aw-ow-before': ['aw=AO', 'ow=AW', 'ow=OW'],
  'gh-team-before-t': ['igh', 'eigh', 'augh', 'ough'],
  'oo-before-k': ['oo=UH'],
  'silent-e-one-consonant': ['a_e', 'e_e', 'i_e', 'o_e', 'y_e'],
  'r-vowel-with-e-last': ['are', 'ore', 'ire', 'ure', 'ere'],
  'never-last': ['j=JH', 'v=V'],
  'ck-after-short': ['ck=K'],
  'doubled-f-l-s-z': ['ff=F', 'll=L', 'ss=S', 'zz=Z'],
  'tch-after-short': ['tch=CH'],
  'dge-after-short': ['dge=JH'],
  'ng-nk-x-after-short': ['ng=NG', 'nk=NG+K', 'x=K+S'],
  's-says-z-after-voiced': ['s=Z'],
};

const ruleOf: ReadonlyMap<string, string> = new Map(
  Object.entries(cardsOfRule).flatMap(([rule, cards]) => cards.map((card) => [card, rule])),
);

/** Rules whose reason says what is wrong; with a card it is said what holds. */
const said: ReadonlyMap<string, string> = new Map([
  ['short-vowel-closed', 'It is short where a consonant after it closes the syllable.'],
]);

const whyOf: ReadonlyMap<string, string> = new Map(SPELLING_RULES.map(({ id, why }) => [id, why]));

/** What holds of every card of a kind (common practice, no published source). */
const kindRules: Readonly<Partial<Record<Kind, string>>> = {
  cluster: 'Each letter keeps its own sound.',
  welded: 'These letters are read as one piece.',
  'consonant-le': 'It makes the last syllable of a word with the consonant before it.',
  'consonant-e': 'The e at the end only belongs to its consonant.',
  double: 'Two letters, one sound, after a short vowel.',
  ending: 'It is joined to the end of a word.',
  'r-vowel': 'r changes the vowel before it: they are one card.',
  'vowel-team': 'These letters make one vowel together.',
  diphthong: 'These letters make one vowel that moves.',
  silent: 'It is written and not said.',
};
