/**
 * Judges what a row of cards says. In this order: a card that was not taught
 * stops it; then the word screen; a real word is real whatever rule it breaks,
 * if its cards are read as on the board (*has* with the s of *sun* is not);
 * all else is nonsense, unless it is a first name, a word that the list lacks,
 * breaks a spelling rule or sounds like a real word spelled otherwise.
 */
import type { CardId } from '../../language/card-id.ts';
import type { Correspondence } from '../../language/correspondence.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { lettersOf } from '../../language/laid-syllable.ts';
import type { Phoneme } from '../../language/phonemes.ts';
import { isFirstName } from '../../words/first-names.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import type { Screened } from '../../words/screen.ts';
import { isSlang } from '../../words/slang.ts';
import { isNearSevere, isSpokenPart } from '../../words/spoken-parts.ts';
import { isUnlistedWord, UNLISTED_REASON } from '../../words/unlisted.ts';
import type { BuiltWord, StopReason } from '../shapes/board.ts';
import { type LaidWord, layWord, plain, secondVowel } from '../shapes/lay-word.ts';
import type { Shape } from '../shapes/shapes.ts';
import { hasHabits, isTaughtCard } from '../shapes/taught-cards.ts';
import { heardAsWord } from './heard-as-word.ts';
import type { JudgeContext } from './judge-context.ts';
import { judgeSyllables } from './judge-syllables.ts';
import { isAllowed, screenedDetail } from './screened-detail.ts';
import { whyBroken } from './word-rules.ts';

/**
 * Judges card ids laid from left to right in the piles of a shape; as one
 * syllable without one. A longer word that is none in the word list is screened
 * syllable by syllable too. Throws on an unknown id, and on a row that is no
 * word of the shape: a shape never lays one.
 */
export function judgeWord(ids: readonly CardId[], context: JudgeContext, shape?: Shape): BuiltWord {
  if (shape?.form === 'beats') return judgeSyllables(ids, context);
  const cards = ids.map(cardOf);
  const laid = shape ? layWord(shape, cards) : plain(cards);
  if (!laid) throw new Error(`${ids.join(' ')} is no word with one vowel to a syllable`);
  return judgeLaid(ids, cards, laid, context, shape);
}

/** Judges a row that was laid already. */
function judgeLaid(
  ids: readonly CardId[],
  cards: readonly Correspondence[],
  laid: LaidWord,
  context: JudgeContext,
  shape?: Shape,
): BuiltWord {
  const { letters: word, sounds } = laid;
  const { taught, lexicon, screen } = context;
  const row = { cards: ids, word, sounds };
  const stopFor = (reason: StopReason): BuiltWord => ({ ...row, kind: 'stopped', reason });
  const stop = (code: Exclude<StopReason['code'], 'screened'>, detail: string): BuiltWord =>
    stopFor({ code, detail });
  const hide = (screened: Screened): BuiltWord =>
    stopFor({ code: 'screened', detail: screenedDetail(screened), screened });

  const untaught = cards.find((card) => !isTaughtCard(card, taught));
  if (untaught) return stop('untaught', `${untaught.grapheme} was not taught yet.`);
  if (shape && !hasHabits(shape, laid, taught)) {
    return stop('untaught', 'Words as long as this were not taught yet.');
  }
  const screened = screen.judge(word, sounds);
  if (screened.verdict !== 'clear') return hide(screened);

  const real = realness(
    word,
    laid.parts,
    lexicon,
    taught.habits.has('flex') ? secondVowel(laid) : -1,
  );
  if (real === 'real') return { ...row, kind: 'real' };
  if (real === 'said-differently') {
    return stop('said-differently', `${word} is a real word, and is said in another way.`);
  }
  for (const piece of piecesOf(laid)) {
    const heard = screen.judge(piece.letters, piece.sounds);
    if (heard.verdict !== 'clear') return hide(heard);
  }
  if (isFirstName(word)) return stop('name', 'It is somebody’s name.');
  if (isSlang(word)) return stop('name', 'It is heard as slang.');
  if (isUnlistedWord(word)) {
    return isAllowed(screened) ? { ...row, kind: 'real' } : stop('name', UNLISTED_REASON);
  }
  if (isSpokenPart(word, sounds)) {
    return stop('name', 'It is a part of longer words, or a letter’s name.');
  }
  if (isNearSevere(sounds)) return stop('name', 'One wrong vowel makes it a word for nobody.');
  const broken = whyBroken(laid);
  if (broken !== null) return stop('rule', broken);
  const twin = soundAlike(laid, lexicon);
  if (twin >= 0) return stop('sound-alike', `It sounds like ${lexicon.word(twin)}.`);
  return { ...row, kind: 'nonsense' };
}

/** The syllables of a longer word, as each would be read alone; none of a short one. */
function piecesOf({ form, syllables }: LaidWord): readonly {
  readonly letters: string;
  readonly sounds: readonly Phoneme[];
}[] {
  if (form === 'one') return [];
  return syllables.map((syllable) => {
    const parts = [...syllable.onset, syllable.vowel, ...syllable.coda];
    return { letters: lettersOf(parts), sounds: parts.flatMap(({ phonemes }) => phonemes) };
  });
}

/**
 * Whether a spelling is a word, and one that these correspondences read. The
 * vowel at place `fading` may be said as a schwa; -1 if none may.
 */
export function realness(
  word: string,
  parts: readonly Correspondence[],
  lexicon: Lexicon,
  fading = -1,
): 'real' | 'said-differently' | 'none' {
  const index = lexicon.indexOf(word);
  if (index < 0) return 'none';
  const reads = (id: string, at: number): boolean =>
    id === parts[at]?.id || (at === fading && id === `${parts[at]?.grapheme}=AX`);
  const same = lexicon
    .readings(index)
    .some(
      ({ cards }) => cards.length === parts.length && cards.every(({ id }, at) => reads(id, at)),
    );
  return same ? 'real' : 'said-differently';
}

/**
 * The index of the commonest familiar word with these sounds, or -1. The
 * vowels of *cot* and *caught* count as one, since half of America says them
 * alike (not before r: *car*, *core*), and the schwa as the vowel of *cup*.
 */
function soundAlike(laid: LaidWord, lexicon: Lexicon): number {
  let found = -1;
  for (const variant of waysToHear(laid)) {
    for (const index of lexicon.saidAs(variant)) {
      if (found < 0 || index < found) found = index;
    }
  }
  return found;
}

/** As its cards say it, and with the second vowel faded; with an ending taken off. */
function waysToHear(laid: LaidWord): readonly string[] {
  const fading = secondVowel(laid);
  const last = laid.parts.at(-1)?.grapheme ?? '';
  if (fading < 0) return heardAsWord(laid.sounds, last);
  const faded = laid.parts.flatMap(({ phonemes }, at): readonly Phoneme[] =>
    at === fading ? ['AX'] : phonemes,
  );
  return [...heardAsWord(laid.sounds, last), ...heardAsWord(faded, last)];
}

function cardOf(id: CardId): Correspondence {
  const card = correspondenceById.get(id);
  if (!card) throw new Error(`there is no card ${id}`);
  return card;
}
