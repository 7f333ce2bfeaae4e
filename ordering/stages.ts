import type { Grade } from '../core/sequence/sequence.ts';

/**
 * What is taught together in one step: a title, the items in text form, and a
 * remark where the count of opened words does not tell what the step is for.
 */
export type UnitSpec = readonly [title: string, items: string, remark?: string];

/**
 * A stage: steps of one kind of spelling. Their order inside the stage is
 * computed (see order-units.ts); the order of the stages is not.
 */
export interface StageSpec {
  readonly name: string;
  readonly grade: Grade;
  /** Why the stage stands here, in a teacher's words. */
  readonly why: string;
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
 * before those that depend on a neighbor, the common before the rare. The
 * grades are the latest that the Common Core standards allow (see core/sequence/standards.ts).
 */
export const STAGES: readonly StageSpec[] = [
  {
    name: 'Doubles and the rest',
    grade: 'K',
    why: 'the last spellings of short words with one vowel',
    units: [
      ['ck', 'ck'],
      ['ff, ll, ss, zz', 'ff ll ss zz'],
      ['qu', 'qu'],
      ['s that buzzes', 's=Z'],
    ],
  },
  {
    name: 'Two letters, one sound',
    grade: 'K',
    why: 'letters that work as a team, once each is known alone',
    units: [
      ['sh', 'sh'],
      ['ch', 'ch'],
      ['th, with and without voice', 'th th=DH'],
      ['wh', 'wh'],
      ['ng, nk', 'ng nk'],
    ],
  },
  {
    name: 'Clusters',
    grade: 'K',
    why: 'no new sound, only more sounds to join',
    units: [
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
    name: 'The vowel says its name',
    grade: 'K',
    why: 'the long sound of each vowel, at the end of short words and with silent e',
    units: [
      ['e, o and i at the end', 'e=IY o=OW i=AY'],
      ['Silent e: a_e', 'a_e'],
      ['Silent e: i_e', 'i_e'],
      ['Silent e: o_e', 'o_e'],
      ['Silent e: u_e, both sounds', 'u_e u_e=Y+UW'],
    ],
  },
  {
    name: 'Fuller short words',
    grade: '1',
    why: 'the last consonant spellings of short words, and endings that add no beat',
    units: [
      ['Three at the beginning', 'habit:three-clusters scr spl spr str shr thr squ'],
      ['tch, nch', 'tch nch'],
      ['ve', 've'],
      ['-ed without a beat of its own', 'ed=T ed=D'],
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
    name: 'Two beats',
    grade: '1',
    why: 'longer words, syllable by syllable, from parts that are known',
    units: [
      ['Two closed syllables, and -ing', 'habit:long-words bb dd gg mm nn pp tt ing'],
      ['-ed and -es with a beat of their own', 'ed=IH+D es'],
      ['y at the end of a short word', 'y=AY'],
      ['y at the end of a longer word, and -ly', 'y=IY'],
      ['Silent e: e_e', 'e_e'],
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
    name: 'Open and fading syllables',
    grade: '2',
    why: 'the remaining kinds of syllable, so that most longer words can be read',
    units: [
      ['a at the end of a syllable', 'a=EY'],
      ['u at the end of a syllable, both sounds', 'u=Y+UW u=UW'],
      ['The vowel that fades', 'habit:schwa a=AX'],
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
      ['ie as in shield, ey', 'ie=IY ey'],
      ['ie as in pie, oe', 'ie=AY oe'],
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
      ['all, alk', 'a=AO al=AO'],
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
    units: [
      [
        're-, de-; -less, -ness, -ment, -est',
        'e=AX est',
        'Returns to the vowel that fades, in beginnings and endings with e; un- and dis- belong here too.',
      ],
      ['-ful', 'u=AX', 'Returns to the vowel that fades, in -ful.'],
      ['-on, con-', 'o=AX', 'Returns to the vowel that fades, in parts with o.'],
      ['ex- before a vowel', 'x=G+Z'],
    ],
  },
  {
    name: 'Latin endings',
    grade: '3',
    why: 'endings of many long words, each read as one piece',
    units: [
      ['-tion', 'ti ti=CH'],
      ['-sion, -ssion', 'si ssi'],
      ['-sion and -sure with voice', 'si=ZH s=ZH'],
      ['-ture; d before u', 't=CH ure=ER d=JH'],
      ['-cial, -cious and their kin', 'ci sci ce=SH xi c=SH t=SH'],
      ['i as in onion, -gion', 'i=Y gi'],
    ],
  },
  {
    name: 'Rarer vowels',
    grade: '3',
    why: 'vowel spellings that few words use, or that have an unexpected sound',
    units: [
      ['augh, ough', 'augh ough'],
      ['eigh, ei as in reindeer', 'eigh ei'],
      ['ei as in ceiling', 'ei=IY'],
      ['ui, eu', 'ui eu eu=Y+UW'],
      ['ah, uh; u as in popular', 'ah uh u=Y+AX'],
      ['ou as in soup', 'ou=UW'],
      ['ou as in double', 'ou=AH'],
      ['-ous', 'ou=AX'],
      ['y as in gym, y_e, ye', 'y=IH y_e ye'],
      ['i as in radio, i_e as in machine', 'i=IY i_e=IY'],
      ['-ain, -ine, -ite, -ome', 'ai=AX ne te me le=L'],
    ],
  },
  {
    name: 'Rarer vowels with r',
    grade: '3',
    why: 'the last spellings that hold r, many of them between vowels',
    units: [
      ['ear as in earth, our as in journey', 'ear=ER our=ER'],
      ['our as in four, oor', 'our=AO+R oor'],
      ['our as in tour, ur as in rural and fury', 'our=UH+R oor=UH+R ur=UH+R ur=Y+UH+R'],
      ['ere, ier', 'ere ier'],
      ['ar as in parent, er as in cherub', 'ar=EH+R er=EH+R'],
      ['er as in hero, ir as in spirit', 'er=IH+R ir=IH+R yr=IH+R'],
      ['ir as in pirate, yre', 'ir=AY+R yr=AY+R yre'],
      ['irr, urr and other rare ones', 'irr urr err arr orr=AO+R yr=ER or=AA+R re'],
    ],
  },
  {
    name: 'Silent letters',
    grade: '3',
    why: 'letters that are written and no longer said',
    units: [
      ['Silent t, al as in palm', 't=- al=AA'],
      ['Silent b, mn', 'b=- mn'],
      ['sc, ps, xc', 'sc=S ps xc cc=K+S'],
      ['gu; u after s', 'gu=G gu=G+W u=W'],
      ['gh as in ghost, rh', 'gh rh'],
    ],
  },
  {
    name: 'Words from afar',
    grade: '3',
    why: 'spellings that English took over with words of other languages',
    units: [
      ['ch as in anchor', 'ch=K'],
      ['ch as in chef', 'ch=SH che'],
      ['que, gue', 'que qu=K gue ngue'],
      ['-ffe, -lle, -tte, -ge', 'ffe lle tte ge=ZH'],
      ['x as in xylophone, ss as in tissue, -sm; vv, kk', 'x=Z ss=SH m=AX+M vv kk'],
    ],
  },
];
