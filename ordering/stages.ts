import type { Grade } from '../core/sequence/sequence.ts';

/**
 * What is taught together in one step: a title, the items in text form, and a
 * remark where the count of opened words does not tell what the step is for.
 */
export type UnitSpec = readonly [title: string, items: string, remark?: string];

/**
 * A stage: steps of one kind of spelling. Their order inside the stage is
 * computed (see order-units.ts) unless each leans on the one before; the order of
 * the stages is by hand.
 */
export interface StageSpec {
  readonly name: string;
  readonly grade: Grade;
  /** Why the stage stands here, in a teacher's words. */
  readonly why: string;
  /** Its steps follow one another as listed, since each leans on the one before. */
  readonly asListed?: true;
  readonly units: readonly UnitSpec[];
}

/** How many letters make the first stage; the others form the second. */
export const FIRST_LETTERS = 8;

export const LETTER_STAGES = {
  first: 'First sounds',
  second: 'More letters',
} as const;

/**
 * The letters of the first two stages, each with its first sound. The letter q
 * waits for *qu*, its only card.
 */
export const LETTERS: readonly UnitSpec[] = [...'abcdefghijklmnoprstuvwxyz'].map((letter) => [
  letter,
  letter,
]);

/**
 * The stages after the letters, placed by hand: one letter before two, short
 * vowels before long, one syllable before two, spellings that hold everywhere
 * before those that depend on a neighbor, the common before the rare.
 * Kindergarten holds about one step a week of a school year: letters, the first
 * teams of letters, and of long vowels what the Common Core standards ask for by
 * then (see core/sequence/standards.ts); clusters and most of silent e wait for
 * grade 1.
 */
export const STAGES: readonly StageSpec[] = [
  {
    name: 'Two letters, one sound',
    grade: 'K',
    why: 'letters that work as a team, once each is known alone',
    units: [
      ['ff, ll, ss, zz', 'ff ll ss zz'],
      ['all, ball', 'a=AO'],
      ['-s as in cats and dogs', 's=Z'],
      ['ck', 'ck'],
      ['qu', 'qu'],
      ['sh', 'sh'],
      ['ch', 'ch'],
      ['th, with and without voice', 'th th=DH'],
      ['wh', 'wh'],
    ],
  },
  {
    name: 'The vowel says its name',
    grade: 'K',
    why: 'the long sound of each vowel, at the end of short words and with silent e',
    asListed: true,
    units: [
      ['be, go, hi, my', 'e=IY o=OW i=AY y=AY'],
      ['Silent e, first met: a_e', 'a_e'],
      ['Silent e: u_e, both sounds', 'u_e u_e=Y+UW'],
    ],
  },
  {
    name: 'Clusters',
    grade: '1',
    why: 'no new sound but ng, only more sounds to join',
    units: [
      ['ng', 'ng'],
      ['nk', 'nk'],
      [
        'Clusters at the end',
        'habit:ending-clusters nd nt mp st sk sp ft lt lp lk ld lf lm pt ct xt',
      ],
      ['Clusters with s', 'habit:s-clusters sc sk sl sm sn sp st sw'],
      ['Clusters with l', 'habit:l-clusters bl cl fl gl pl'],
      ['Clusters with r', 'habit:r-clusters br cr dr fr gr pr tr tw'],
    ],
  },
  {
    name: 'Silent e',
    grade: '1',
    why: 'the other vowels with silent e, now in words with clusters too',
    units: [
      ['Silent e: i_e', 'i_e'],
      ['Silent e: o_e, and e_e as in these', 'o_e e_e'],
    ],
  },
  {
    name: 'Fuller short words',
    grade: '1',
    why: 'the last consonant spellings of short words',
    units: [
      ['Three at the beginning', 'habit:three-clusters scr spl spr str shr thr squ'],
      ['tch, nch', 'tch nch'],
      ['ve', 've'],
    ],
  },
  {
    name: 'Two beats and endings',
    grade: '1',
    why: 'longer words, syllable by syllable, and the endings that do not change the word before them',
    asListed: true,
    units: [
      ['Two closed syllables, and -ing', 'habit:long-words ing'],
      ['-ed, its three sounds', 'ed=T ed=D ed=IH+D'],
      ['-es with a beat of its own', 'es'],
    ],
  },
  {
    name: 'Endings that change the word',
    grade: '1',
    why: 'what an ending does to the word before it',
    asListed: true,
    units: [
      ['Double the letter: running, rabbit', 'bb dd gg mm nn pp tt'],
      ['Drop the e: making, using; open a and u', 'a=EY u=Y+UW u=UW'],
      ['y to i: cried, flies', 'ie=AY'],
      ['-y, -ly', 'y=IY'],
      ['y to i: babies, happier; ie as in shield', 'ie i=IY'],
    ],
  },
  {
    name: 'Vowel teams',
    grade: '1',
    why: 'two vowel letters for one sound',
    units: [
      ['ai, ay', 'ai ay'],
      ['ee', 'ee'],
      ['ea', 'ea'],
      ['oa', 'oa'],
      ['ow as in snow', 'ow'],
      ['igh', 'igh'],
      ['oo as in spoon', 'oo'],
      ['oo as in book', 'oo=UH'],
    ],
  },
  {
    name: 'Vowels with r',
    grade: '1',
    why: 'r takes the vowel into its own sound',
    units: [
      ['ar', 'ar'],
      ['or', 'or'],
      ['er', 'er'],
      ['ir', 'ir'],
      ['ur', 'ur'],
    ],
  },
  {
    name: 'Vowels that glide',
    grade: '1',
    why: 'new vowel sounds, most of them with a moving mouth',
    units: [
      ['ou', 'ou'],
      ['ow as in cow', 'ow=AW'],
      ['oi, oy', 'oi oy'],
      ['au, aw', 'au aw'],
    ],
  },
  {
    name: 'Fading syllables',
    grade: '2',
    why: 'the remaining kinds of syllable, so that most longer words can be read',
    units: [
      ['The vowel that fades: about', 'habit:schwa a=AX'],
      ['Consonant and le', 'le l=AX+L'],
      ['rr, cc', 'rr cc'],
    ],
  },
  {
    name: 'Soft c, soft g',
    grade: '2',
    why: 'letters whose second sound is given by the letter after them',
    units: [
      ['c before e, i and y; -ce', 'c=S ce'],
      ['g before e, i and y; -ge', 'g=JH ge'],
      ['dge', 'dge dg'],
      ['-se, -ze, -the', 'se se=Z ze the'],
    ],
  },
  {
    name: 'More vowel teams',
    grade: '2',
    why: 'second sounds of known teams, and the teams met less often',
    units: [
      ['ea as in bread', 'ea=EH'],
      ['ey as in key, oe', 'ey oe'],
      ['ue, both sounds', 'ue ue=Y+UW'],
      ['ew, both sounds', 'ew ew=Y+UW'],
    ],
  },
  {
    name: 'Changed by a neighbor',
    grade: '2',
    why: 'vowels whose sound is given by the letter beside them',
    units: [
      ['a after w and qu', 'a=AA'],
      ['alk, alt', 'al=AO'],
      ['o as in monkey', 'o=AH'],
      ['ar and or after w', 'ar=AO+R or=ER'],
    ],
  },
  {
    name: 'Quiet partners',
    grade: '2',
    why: 'two letters of which one is silent, and ph',
    units: [
      ['kn, wr', 'kn wr'],
      ['gn, mb', 'gn mb'],
      ['ph', 'ph'],
    ],
  },
  {
    name: 'More vowels with r',
    grade: '2',
    why: 'longer spellings that hold a vowel and r',
    units: [
      ['air, are', 'air are'],
      ['ear, eer', 'ear eer'],
      ['ear as in pear', 'ear=EH+R'],
      ['ore, oar', 'ore oar'],
      ['ire, our as in hour', 'ire our'],
      ['ure, both sounds', 'ure ure=UH+R'],
      ['-ar', 'ar=ER'],
    ],
  },
  {
    name: 'Parts with meaning',
    grade: '2',
    why: 'beginnings and endings that change what a word means, read as one piece',
    asListed: true,
    units: [
      [
        're-, de-, pre-: again, away, before',
        'e=AX',
        'Returns to the vowel that fades, in beginnings with e. Un- (not) and dis- (not, apart) belong here too; their letters are known.',
      ],
      [
        '-est, -less, -ness, -ment: most, without, being so',
        'est',
        'Returns to the vowel that fades, in endings with e.',
      ],
      ['-ful: full of', 'u=AX', 'Returns to the vowel that fades, in -ful.'],
      [
        'con-, com-: together',
        'o=AX',
        'Returns to the vowel that fades, in con- and com- and at the end, as in lemon.',
      ],
      ['ex-: out, before a vowel', 'x=G+Z'],
    ],
  },
  {
    name: 'Latin endings',
    grade: '3',
    why: 'endings of many long words, each read as one piece, each with a meaning of its own',
    units: [
      ['-tion: an act or its outcome', 'ti ti=CH'],
      ['-sion, -ssion, -sure: the same after s', 'si ssi si=ZH s=ZH'],
      ['-ture: what comes of it; d before u', 't=CH ure=ER d=JH'],
      ['-cial, -cious and their kin: of that kind', 'ci sci ce=SH xi c=SH t=SH'],
      ['i as in onion, -gion', 'i=Y gi'],
      ['-ous: full of', 'ou=AX'],
      ['-ain, -ine, -ite, -ome', 'ai=AX ne te me le=L'],
    ],
  },
  {
    name: 'Rarer vowels',
    grade: '3',
    why: 'vowel spellings that few words use, or that have an unexpected sound',
    units: [
      ['augh, ough', 'augh ough'],
      ['eigh; ei as in reindeer and as in ceiling', 'eigh ei ei=IY'],
      ['ui, eu, ou as in soup', 'ui eu eu=Y+UW ou=UW'],
      ['ou as in double', 'ou=AH'],
      ['y as in gym, y_e, ye', 'y=IH y_e ye'],
      ['i_e as in machine; ah, uh; u as in popular', 'i_e=IY ah uh u=Y+AX'],
    ],
  },
  {
    name: 'Rarer vowels with r',
    grade: '3',
    why: 'the last spellings that hold r, many of them between vowels',
    units: [
      ['ear as in earth, our as in journey', 'ear=ER our=ER'],
      [
        'our as in four and as in tour, oor; ur as in fury',
        'our=AO+R oor our=UH+R oor=UH+R ur=UH+R ur=Y+UH+R',
      ],
      ['ere, ier; er as in hero, ir as in spirit', 'ere ier er=IH+R ir=IH+R yr=IH+R'],
      ['ar as in parent, er as in cherub', 'ar=EH+R er=EH+R'],
      [
        'irr, urr, ir as in pirate and other rare ones',
        'irr urr err arr orr=AO+R yr=ER or=AA+R re ir=AY+R yr=AY+R yre',
      ],
    ],
  },
  {
    name: 'Silent letters',
    grade: '3',
    why: 'letters that are written and no longer said',
    units: [
      ['Silent t, silent b, mn; al as in palm', 't=- b=- mn al=AA'],
      ['sc, xc; gh as in ghost', 'sc=S xc cc=K+S gh'],
      ['gu; u after s', 'gu=G gu=G+W u=W'],
    ],
  },
  {
    name: 'Words from afar',
    grade: '3',
    why: 'spellings that English took over with words of other languages',
    units: [
      ['From Greek: ch as in anchor, ps, rh, x as in xylophone, -sm', 'ch=K ps rh x=Z m=AX+M'],
      ['-ffe, -lle, -tte, -ge; ss as in tissue; vv, kk', 'ffe lle tte ge=ZH ss=SH vv kk'],
      ['From French: ch as in chef, que, gue', 'ch=SH che que qu=K gue ngue'],
    ],
  },
];
