import { COMMON_PRACTICE, NATIONAL_CURRICULUM } from '../../language/spelling-rule.ts';
import { brokenRules } from '../../language/spelling-rules.ts';
import { isOneShortVowel } from '../../language/vowel-before-ending.ts';
import type { LaidWord } from '../shapes/lay-word.ts';

/** A rule about how syllables, or a base and its ending, meet; `why` is a teacher's sentence. */
interface WordRule {
  readonly id: string;
  readonly why: string;
  readonly source: string;
  readonly breaks: (word: LaidWord) => boolean;
}

/** Why a laid word may not be built as nonsense: the first rule it breaks, or null. */
export function whyBroken(word: LaidWord): string | null {
  for (const syllable of word.syllables) {
    const [broken] = brokenRules(syllable);
    if (broken) return broken.why;
  }
  return word.form === 'one' ? null : (WORD_RULES.find(({ breaks }) => breaks(word))?.why ?? null);
}

/** Rules beyond a single syllable. Doubtful words are stopped: a board has words enough. */
const WORD_RULES: readonly WordRule[] = [
  {
    id: 'one-double-card',
    why: 'The same letter on both sides of the joint is one doubled card: rab·bit.',
    source: COMMON_PRACTICE,
    breaks: (word) => {
      const [left, right] = joint(word);
      return left !== '' && left.at(-1) === right[0];
    },
  },
  {
    id: 'joint-reads-as-one',
    why: 'The letters that meet here would be read as one sound, or change their sound.',
    source: COMMON_PRACTICE,
    breaks: (word) => {
      const [left, right] = joint(word);
      if (left === '') return false;
      return READ_AS_ONE.test(`${left}·${right}`);
    },
  },
  {
    id: 'joint-divides-twice',
    why: 'A consonant with l, r or w after it could go to the second syllable: a·pron or ap·ron.',
    source: COMMON_PRACTICE,
    breaks: (word) => {
      const [left, right] = joint(word);
      return /[bcdfgkpt]$/.test(left) && /^(l|r|w)/.test(right);
    },
  },
  {
    id: 'inside-first-syllable',
    why: 'Doubled letters, ck, tch and dge stand at the end of a word, not before another consonant.',
    source: NATIONAL_CURRICULUM,
    breaks: ({ form, syllables }) => {
      if (form !== 'two') return false;
      return (syllables[0]?.coda ?? []).some(
        ({ id, kind }) => kind === 'double' || kind === 'trigraph' || /^(ck|mb)=/.test(id),
      );
    },
  },
  {
    id: 'inside-second-syllable',
    why: 'kn, wr, gn, wh, rh and gh begin a word; they do not stand inside it.',
    source: COMMON_PRACTICE,
    breaks: ({ form, syllables }) =>
      form === 'two' &&
      (syllables[1]?.onset ?? []).some(({ id }) => /^(kn|wr|gn|wh|rh)=|^gh=G|^th=DH/.test(id)),
  },
  {
    id: 'open-before-r',
    why: 'A vowel before r is changed by it: use ar, er, ir, or, ur.',
    source: COMMON_PRACTICE,
    breaks: ({ form, syllables }) =>
      form === 'two' && syllables[0]?.coda.length === 0 && syllables[1]?.onset[0]?.grapheme === 'r',
  },
  {
    id: 'double-at-end-of-longer-word',
    why: 'f, l and z are doubled at the end of words of one syllable.',
    source: NATIONAL_CURRICULUM,
    breaks: ({ form, syllables }) =>
      (form === 'two' || form === 'doubled') &&
      /^(ff|ll|zz)$/.test(syllables[1]?.coda.at(-1)?.grapheme ?? ''),
  },
  {
    id: 'read-as-an-ending',
    why: 'Its end would be read as -ed or -es: chaked.',
    source: COMMON_PRACTICE,
    breaks: ({ form, letters }) =>
      (form === 'two' || form === 'doubled') && READ_AS_ENDING.test(letters),
  },
  {
    id: 'le-after-open-or-closed',
    why: 'A long vowel stands before one consonant and le (ta·ble), a short one before two (bub·ble, can·dle).',
    source: NATIONAL_CURRICULUM,
    breaks: ({ form, syllables, bridge }) => {
      if (form !== 'le' || !bridge) return false;
      const isShort = syllables[0]?.vowel.kind === 'short-vowel';
      return isShort === (bridge.grapheme.length === 1);
    },
  },
  {
    id: 'double-before-ending',
    why: 'After one short vowel the last consonant is doubled before -ed, -ing, -er and -est: hop, hopping.',
    source: NATIONAL_CURRICULUM,
    breaks: (word) => {
      if (word.form !== 'ending' || !beginsWithVowel(word)) return false;
      const { vowel, coda } = base(word);
      return coda.length === 1 && coda[0]?.grapheme.length === 1 && coda[0].id !== 'x=K+S'
        ? isOneShortVowel(vowel)
        : false;
    },
  },
  {
    id: 'drop-e-before-ending',
    why: 'A base that ends in e loses it before an ending: dance, dancing.',
    source: NATIONAL_CURRICULUM,
    breaks: (word) => {
      if (word.form !== 'ending') return false;
      return lettersBefore(word).endsWith('e') && (beginsWithVowel(word) || !/v/.test(last(word)));
    },
  },
  {
    id: 'es-after-hissing',
    why: 'After s, x, z, ch and sh the ending is -es, with a beat of its own; elsewhere it is -s.',
    source: NATIONAL_CURRICULUM,
    breaks: (word) => {
      const hissing = /^(S|Z|SH|CH|JH|ZH)$/.test(lastSound(word));
      if (word.suffix?.grapheme === 'es') return !hissing;
      return word.form === 'ending' && word.suffix?.grapheme === 's' && hissing;
    },
  },
  {
    id: 's-by-voice',
    why: 's says /s/ after p, t, k, f and th, and /z/ after all other sounds.',
    source: NATIONAL_CURRICULUM,
    breaks: (word) => {
      if (word.form !== 'ending' || word.suffix?.grapheme !== 's') return false;
      return (word.suffix.id === 's=S') !== VOICELESS.test(lastSound(word));
    },
  },
  {
    id: 'ed-by-voice',
    why: '-ed says /id/ after t and d, /t/ after other sounds without voice, /d/ after the rest.',
    source: NATIONAL_CURRICULUM,
    breaks: (word) => {
      if (word.suffix?.grapheme !== 'ed') return false;
      const sound = lastSound(word);
      const right = /^[TD]$/.test(sound) ? 'ed=IH+D' : VOICELESS.test(sound) ? 'ed=T' : 'ed=D';
      return word.suffix.id !== right;
    },
  },
];

const VOICELESS = /^(P|T|K|F|TH|S|SH|CH)$/;
/** The end of a word of two beats that a reader takes for an ending. */
const READ_AS_ENDING = /[^aeiou]e[ds]$/;
/** Letters on both sides of a joint, a dot between, that would be read as one sound or change theirs. */
export const READ_AS_ONE =
  /s·h|t·h|c·h|p·h|w·h|g·h|c·k|n·[gkcqx]|q·u|t·ch|d·g|s·ch|k·n|g·n|w·r|x·[sc]|[sz]·[szc]|sh·s|ch·[sj]|th·[sth]|[aeiou]·h$|s·y|t·y/;

/** The letters on both sides of the joint of two syllables; none where a bridge joins them. */
function joint({ form, syllables }: LaidWord): readonly [left: string, right: string] {
  if (form !== 'two') return ['', ''];
  const [first, second] = syllables;
  return [lettersOfAll(first?.coda ?? []), lettersOfAll(second?.onset ?? [])];
}

function lettersOfAll(cards: readonly { readonly grapheme: string }[]): string {
  return cards.map(({ grapheme }) => grapheme).join('');
}

function base({ syllables }: LaidWord) {
  return syllables[0] as LaidWord['syllables'][number];
}

function lettersBefore({ letters, suffix }: LaidWord): string {
  return letters.slice(0, letters.length - (suffix?.grapheme.length ?? 0));
}

function last(word: LaidWord): string {
  return base(word).coda.at(-1)?.grapheme ?? '';
}

function lastSound(word: LaidWord): string {
  const { vowel, coda } = base(word);
  return (coda.at(-1) ?? vowel).phonemes.at(-1) ?? '';
}

function beginsWithVowel({ suffix }: LaidWord): boolean {
  return /^[aeiouy]/.test(suffix?.grapheme ?? '');
}
