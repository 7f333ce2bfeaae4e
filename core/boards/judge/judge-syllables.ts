/**
 * Judges what a row of syllable cards says: as rows of other cards, in the same order (judge.ts). A word
 * of the list is real where its own reading is cut into these syllables. Nonsense keeps to what children
 * meet: each syllable comes from words of the list, and the joint is one that cannot be read otherwise.
 */
import { type CardId, graphemeOf } from '../../language/card-id.ts';
import type { Correspondence } from '../../language/correspondence.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { type LaidSyllable, laySyllable } from '../../language/laid-syllable.ts';
import type { Phoneme } from '../../language/phonemes.ts';
import { cardsOnCard } from '../../language/syllable-card.ts';
import { readAs } from '../../words/decodable.ts';
import { isFirstName } from '../../words/first-names.ts';
import { isKnownCard } from '../../words/implied.ts';
import { isSlang } from '../../words/slang.ts';
import { isNearSevere, isSpokenPart } from '../../words/spoken-parts.ts';
import { isUnlistedWord, UNLISTED_REASON } from '../../words/unlisted.ts';
import type { BuiltWord, StopReason } from '../shapes/board.ts';
import { laySyllables } from '../shapes/lay-syllables.ts';
import { heardAsWord } from './heard-as-word.ts';
import type { JudgeContext } from './judge-context.ts';
import { isAllowed, screenedDetail } from './screened-detail.ts';
import { READ_AS_ONE } from './word-rules.ts';

/** Judges syllable cards laid from left to right. Throws on a card that is no syllable. */
export function judgeSyllables(ids: readonly CardId[], context: JudgeContext): BuiltWord {
  const { taught, lexicon, screen } = context;
  const word = ids.map(graphemeOf).join('');
  const row = { cards: ids, word, sounds: soundsOfRow(ids) };
  const stopFor = (reason: StopReason): BuiltWord => ({ ...row, kind: 'stopped', reason });
  const stop = (code: Exclude<StopReason['code'], 'screened'>, detail: string): BuiltWord =>
    stopFor({ code, detail });
  const untaught = ids.flatMap(cardsOnCard).find((id) => !isRead(id, context));
  if (untaught) return stop('untaught', `${graphemeOf(untaught)} was not taught yet.`);
  const screened = screen.judge(word, row.sounds);
  if (screened.verdict !== 'clear') {
    return stopFor({ code: 'screened', detail: screenedDetail(screened), screened });
  }
  const index = lexicon.indexOf(word);
  if (index >= 0) {
    const isCutSo = lexicon.readings(index).some((reading) => {
      const laid = laySyllables(reading);
      return laid?.length === ids.length && laid.every((id, at) => id === ids[at]);
    });
    if (!isCutSo) {
      return stop('said-differently', `${word} is a real word, and is divided in another way.`);
    }
    if (readAs(index, lexicon, taught)) return { ...row, kind: 'real' };
    return stop('untaught', `${word} asks for more than was taught yet.`);
  }
  if (isFirstName(word)) return stop('name', 'It is somebody’s name.');
  if (isSlang(word)) return stop('name', 'It is heard as slang.');
  if (isUnlistedWord(word)) {
    return isAllowed(screened) ? { ...row, kind: 'real' } : stop('name', UNLISTED_REASON);
  }
  if (isSpokenPart(word, row.sounds)) return stop('name', 'It is a part of longer words.');
  if (isNearSevere(row.sounds)) return stop('name', 'One wrong vowel makes it a word for nobody.');
  const broken = brokenJoint(ids.map(laid));
  if (broken !== null) return stop('rule', broken);
  const last = graphemeOf(cardsOnCard(ids.at(-1) as CardId).at(-1) as CardId);
  for (const way of [row.sounds, faded(ids)]) {
    const twin = heardAsWord(way, last).flatMap((sounds) => lexicon.saidAs(sounds))[0];
    if (twin !== undefined) return stop('sound-alike', `It sounds like ${lexicon.word(twin)}.`);
  }
  return { ...row, kind: 'nonsense' };
}

/** The sounds of a row as its syllables are read; a consonant that stands on both sides of a joint is said once. */
export function soundsOfRow(ids: readonly CardId[]): readonly Phoneme[] {
  const sounds: Phoneme[] = [];
  let before = '';
  for (const id of ids) {
    cardsOnCard(id).forEach((own, at) => {
      const isTwice = at === 0 && own === before && !isVowel(own);
      if (!isTwice) sounds.push(...(correspondenceById.get(own)?.phonemes ?? []));
    });
    before = cardsOnCard(id).at(-1) ?? '';
  }
  return sounds;
}

/** The same with the vowel of the last closed syllable faded. */
function faded(ids: readonly CardId[]): readonly Phoneme[] {
  const all = soundsOfRow(ids);
  const last = cardsOnCard(ids.at(-1) as CardId);
  const vowel = last.findIndex((id) => correspondenceById.get(id)?.kind === 'short-vowel');
  if (vowel < 0) return all;
  const behind = last
    .slice(vowel)
    .reduce((sum, id) => sum + (correspondenceById.get(id)?.phonemes.length ?? 0), 0);
  return all.map((sound, at) => (at === all.length - behind ? 'AX' : sound));
}

function isVowel(id: CardId): boolean {
  return correspondenceById.get(id)?.kind === 'short-vowel';
}

/** A card on a syllable was taught; a vowel that fades by habit. */
function isRead(id: CardId, { taught }: JudgeContext): boolean {
  return id.endsWith('=AX')
    ? taught.habits.has('schwa') || isKnownCard(id, taught)
    : isKnownCard(id, taught);
}

function laid(id: CardId): LaidSyllable {
  const cards = cardsOnCard(id).map((own) => correspondenceById.get(own) as Correspondence);
  const syllable = laySyllable(cards);
  if (!syllable) throw new Error(`${id} is no syllable`);
  return syllable;
}

/** Why a joint would be read otherwise, as a teacher says it; null where every joint is plain. */
function brokenJoint(syllables: readonly LaidSyllable[]): string | null {
  for (let at = 1; at < syllables.length; at++) {
    const [left, right] = [syllables[at - 1] as LaidSyllable, syllables[at] as LaidSyllable];
    const why = brokenBetween(left, right);
    if (why) return why;
  }
  const { vowel, coda } = syllables.at(-1) as LaidSyllable;
  return vowel.grapheme === 'e' && /^[ds]$/.test(lettersOf(coda))
    ? 'Its end would be read as -ed or -es.'
    : null;
}

function brokenBetween(left: LaidSyllable, right: LaidSyllable): string | null {
  const [before, after] = [lettersOf(left.coda), lettersOf(right.onset)];
  const vowel = left.vowel.grapheme;
  if (after === '')
    return 'A syllable inside a nonsense word begins with a consonant, so that it divides in one way only.';
  if (vowel.includes('_')) return 'A silent e stands at the end of a word.';
  const isOpenShort = before === '' && left.vowel.kind === 'short-vowel';
  if (isOpenShort) return 'A short vowel is closed in by a consonant.';
  if (left.vowel.kind === 'consonant-le') return 'Consonant and le stand at the end of a word.';
  if (before === '' && after[0] === 'r')
    return 'A vowel before r is changed by it: use ar, er, ir, or, ur.';
  if (before !== '' && before.at(-1) === after[0]) {
    const once = before.length === 1 && /[bdfglmnprstz]/.test(before) && after.length === 1;
    return once && left.vowel.kind === 'short-vowel' ? null : 'This letter is not doubled here.';
  }
  if (READ_AS_ONE.test(`${before}·${after}`)) {
    return 'The letters that meet here would be read as one sound, or change their sound.';
  }
  if (/[bcdfgkpt]$/.test(before) && /^[lrw]/.test(after)) {
    return 'A consonant with l, r or w after it could go to the second syllable: a·pron or ap·ron.';
  }
  if (/^(ff|ll|ss|zz|ck|tch|dge)$/.test(before)) {
    return 'Doubled letters, ck, tch and dge stand at the end of a word, not before another consonant.';
  }
  if (right.onset.some(({ id }) => /^(kn|wr|gn|wh|rh)=|^th=DH/.test(id))) {
    return 'kn, wr, gn, wh and rh begin a word; they do not stand inside it.';
  }
  return null;
}

function lettersOf(cards: readonly Correspondence[]): string {
  return cards.map(({ grapheme }) => grapheme).join('');
}
