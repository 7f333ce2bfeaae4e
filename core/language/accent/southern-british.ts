/**
 * Southern British from American cards. The spelling tells most of what American sounds have lost: which
 * /ŏ/ is that of *hot* and which that of *father*, and which vowel stood before the r of *parrot*, *hurry*
 * or *sorry*. So the rules read card by card; words that they get wrong are in `southern-british-words.ts`.
 * The rules are those of Wells, *Accents of English*, 1982, and of the sounds in England's National
 * Curriculum, English Appendix 1 (the first from memory). How well they do: docs/accents.md.
 */
import { isVowelPhoneme } from '../phonemes.ts';
import type { CardReading, Reading } from '../reading.ts';
import type { HereSound } from './here-sound.ts';
import { britishChanges } from './southern-british-words.ts';

/** How a word is said in southern Britain, by its cards. */
export function saidInBritain(reading: Reading): readonly HereSound[] {
  return cardsInBritain(reading).flat();
}

/** The same card by card. An r that is heard between two cards counts to the first. */
export function cardsInBritain(reading: Reading): readonly (readonly HereSound[])[] {
  const changes = britishChanges(reading.word);
  const { cards } = reading;
  return cards.map((card, at) => {
    const sounds: HereSound[] = [];
    const next = cards.slice(at + 1).find(({ phonemes }) => phonemes.length > 0);
    const opens = next !== undefined && isVowelPhoneme(next.phonemes[0] as never);
    const isLast = cards.findLastIndex(({ id }) => id === card.id) === at;
    const changed = isLast ? changes?.get(card.id) : undefined;
    const said = changed ?? saidByRule(reading, at, opens);
    for (const sound of said) {
      if (sound === 'R' && !opens && card.phonemes.at(-1) !== 'R') continue;
      sounds.push(sound);
    }
    if (changed && opens && endsInR(card) && said.at(-1) !== 'R') sounds.push('R');
    return sounds;
  });
}

/** Whether an r stands at the end of a card, to be heard when a vowel follows. */
function endsInR({ phonemes }: CardReading): boolean {
  return phonemes.at(-1) === 'R' || phonemes.at(-1) === 'ER';
}

function saidByRule(reading: Reading, at: number, opens: boolean): readonly HereSound[] {
  const card = reading.cards[at] as CardReading;
  const { phonemes, grapheme, id } = card;
  const before = reading.cards[at - 1]?.phonemes.at(-1);
  const next = reading.cards[at + 1];
  const whole = WHOLE[id];
  if (whole) return opens ? whole.open : whole.closed;
  const rest = reading.word.slice((card.letters.at(-1) as number) + 1);
  if (id === 'ar=EH+R' && reading.syllables.length > 2 && /^(y|ily|ies)$/.test(rest))
    return ['AX', 'R'];
  if (id === 'ar=EH+R' && !opens) return ['EA'];
  if (id === 'ar=EH+R') return SQUARE.test(rest) ? ['EA', 'R'] : ['AE', 'R'];
  if (id === 'or=AO+R' && opens) {
    if (reading.syllables.length > 3 && /^(y|ily|ies)$/.test(rest)) return ['AX', 'R'];
    return FORCE.test(rest) ? ['AO', 'R'] : ['OH', 'R'];
  }
  if (id === 'our=ER' && opens && !isWeak(reading, at)) return ['AH', 'R'];
  const [sound, second] = phonemes;
  if (second === 'R' && phonemes.length === 2) {
    const r = { AA: 'AA', AO: 'AO', EH: 'EA', IH: 'IA', UH: 'AO' }[sound as string];
    if (r) return opens ? [r as HereSound, 'R'] : [r as HereSound];
  }
  const last = phonemes.at(-1);
  if (last === 'R' && phonemes.length === 3) {
    const vowel = ({ AA: 'AA', UH: 'AO', AO: 'AO' } as const)[phonemes[1] as 'AA'];
    if (vowel) return opens ? [sound as HereSound, vowel, 'R'] : [sound as HereSound, vowel];
  }
  if (last === 'R' && sound === 'AY') return opens ? ['AY', 'AX', 'R'] : ['AY', 'AX'];
  if (last === 'ER') {
    const vowel = phonemes.length > 1 || isWeak(reading, at) ? 'AX' : 'ER';
    return [...phonemes.slice(0, -1), vowel, ...(opens ? (['R'] as const) : [])];
  }
  if (id === 'a=AA' && next?.phonemes[0] === 'L') return ['AO'];
  if (id === 'a=AA' && before === 'W') return ['OH'];
  if (sound === 'R' && phonemes.length === 1) return opens ? phonemes : [];
  if (
    phonemes.length === 1 &&
    sound === 'UW' &&
    before &&
    YOD.has(before) &&
    YOD_LETTERS.has(grapheme)
  ) {
    return ['Y', 'UW'];
  }
  return phonemes;
}

/** After these a *u* or *ew* keeps its y (*tune*, *dew*, *new*). */
const YOD: ReadonlySet<string> = new Set(['T', 'D', 'N']);
const YOD_LETTERS: ReadonlySet<string> = new Set(['u', 'u_e', 'ue', 'ew', 'eu']);

/**
 * Whether an er, or, ar, ur has faded: at the end of a longer word or before its endings, and before a vowel
 * or n; but not after w (*homework*), nor in the first syllable unless it is a prefix (*forget*, *surprise*).
 */
function isWeak({ cards, syllables, word }: Reading, at: number): boolean {
  const { letters, grapheme } = cards[at] as CardReading;
  if (/^(ir|ear|yr)/.test(grapheme) || syllables.length === 1) return false;
  const from = letters[0] as number;
  if (STRESSED_ER.test(word)) return false;
  const rest = word.slice((letters.at(-1) as number) + 1);
  if (from < (syllables[1]?.from ?? Infinity)) {
    return grapheme === 'or' ? !/w$/.test(word.slice(0, from)) : PREFIX.test(word);
  }
  if (/^(or|ar)$/.test(grapheme)) return !/w$/.test(word.slice(0, from)) || grapheme === 'ar';
  if (grapheme === 'ur') return /^(day|al|ally|$)/.test(rest);
  return !STRONG.test(rest);
}
const PREFIX = /^(per(?!ch|k|m$|ms$|son|fect(ly)?$|man|ker)|par(?=[lt]ic)|sur(?!f|g|ly|vey|plus))/;
/** What follows a stressed er: ob·serve, con·vert, e·mer·gency, de·ter·mine. */
const STRONG =
  /^(v(e|es|ed|er|ers|ing|ant|ants|ance)|s(e|es|ed|ing|ion|ions|ity|ities|al|ally|ely)|t(s|ed|ing|ion|ible)?|g(e|es|ed|ing|ence|ent|ency|encies)|mine[sdr]?|mining|mined|cial|cially|cials|nal|nally|nity)$/;
const STRESSED_ER =
  /^(pre|re|de|in|con|trans)fer(s|red|ring)?$|^(oc|re|in|con)cur(s|red|ring)?$|^(de|a)ter(s|red|ring)?$|thermometer|^(con|dis)cern/;

/** The ar of *parent*, *various*, *scary* is that of *chair*; that of *carol*, *parachute* is short. */
const SQUARE = /^(y|ies|ier|iest|ed|ing|ings|ent|ents|ental|ea|eas|i[aou].*|um|ely)$/;
/** The or of *story*, *boring*, *chorus* keeps its sound; that of *forest*, *majority* is short. */
const FORCE = /^(y|ies|ied|ing|ings|ed|er|ers|i[aou].*|um|ums|us|uses|on|a|as|able)$/;

/** Cards that are said otherwise: before a consonant or at the end, and before a vowel. */
const r = (vowel: HereSound) => ({ closed: ['ER'], open: [vowel, 'R'] }) as const;
const same = (...sounds: readonly HereSound[]) => ({ closed: sounds, open: sounds });
const WHOLE: Readonly<
  Record<string, { readonly closed: readonly HereSound[]; readonly open: readonly HereSound[] }>
> = {
  'o=AA': same('OH'),
  'ow=AA': same('OH'),
  'ou=AA': same('OH'),
  'e=AA': same('OH'),
  'i=AA': same('OH'),
  'a=AH': same('OH'),
  'al=AE': same('AA'),
  'au=AE': same('AA'),
  'or=AA+R': same('OH', 'R'),
  'orr=AO+R': same('OH', 'R'),
  'orr=ER': r('AH'),
  'urr=ER': r('AH'),
  'irr=ER': r('IH'),
  'yr=ER': same('IH', 'R'),
  'err=ER': r('EH'),
  'er=EH+R': same('EH', 'R'),
  'ir=IH+R': same('IH', 'R'),
  'yr=IH+R': same('IH', 'R'),
  'ure=ER': { closed: ['AX'], open: ['AX', 'R'] },
  're=ER': { closed: ['AX'], open: ['AX', 'R'] },
};
