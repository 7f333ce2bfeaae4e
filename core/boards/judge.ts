/**
 * Judges what a row of cards says. In this order: a card that was not taught
 * stops it; then the word screen; a real word is real whatever rule it breaks,
 * if its cards are read as on the board (*has* with the s of *sun* is not);
 * all else is nonsense, unless it is a first name, breaks a spelling rule or
 * sounds like a real word spelled otherwise.
 */
import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { laySyllable, partsOf, soundsOf, spellingOf } from '../language/laid-syllable.ts';
import type { Phoneme } from '../language/phonemes.ts';
import { brokenRules } from '../language/spelling-rules.ts';
import type { Taught } from '../language/taught.ts';
import { isFirstName } from '../words/first-names.ts';
import type { Band, Lexicon } from '../words/lexicon.ts';
import type { Screened, WordScreen } from '../words/screen.ts';
import type { BuiltWord, StopReason } from './board.ts';

/** What a judgement rests on. The teacher's own decisions about words are part of the screen. */
export interface JudgeContext {
  readonly taught: Taught;
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
}

/** The rarest band whose words make a sound-alike a sound-alike. */
export const SOUND_ALIKE_BAND: Band = 6;

/**
 * Judges card ids laid from left to right as one syllable. Throws on an
 * unknown id or a row without exactly one vowel: a shape never lays one.
 */
export function judgeWord(ids: readonly string[], context: JudgeContext): BuiltWord {
  const cards = ids.map(cardOf);
  const syllable = laySyllable(cards);
  if (!syllable) throw new Error(`${ids.join(' ')} is no syllable with one vowel`);
  const word = spellingOf(syllable);
  const sounds = soundsOf(syllable);
  const row = { cards: ids, word, sounds };
  const stop = (code: StopReason['code'], detail: string): BuiltWord => ({
    ...row,
    kind: 'stopped',
    reason: { code, detail },
  });

  const untaught = cards.find((card) => !context.taught.correspondences.has(card.id));
  if (untaught) return stop('untaught', `${untaught.grapheme} was not taught yet.`);
  const screened = context.screen.judge(word, sounds);
  if (screened.verdict !== 'clear') return stop('screened', screenedDetail(screened));

  const real = realness(word, cards.flatMap(partsOf), context.lexicon);
  if (real === 'real') return { ...row, kind: 'real' };
  if (real === 'said-differently') {
    return stop('said-differently', `${word} is a real word, and is said in another way.`);
  }
  if (isFirstName(word)) return stop('name', 'It is somebody’s name.');
  const [broken] = brokenRules(syllable);
  if (broken) return stop('rule', broken.why);
  const twin = soundAlike(sounds, context.lexicon);
  if (twin >= 0) {
    return stop('sound-alike', `It sounds like ${context.lexicon.word(twin)}.`);
  }
  return { ...row, kind: 'nonsense' };
}

/** Whether a spelling is a word, and one that these correspondences read. */
export function realness(
  word: string,
  parts: readonly Correspondence[],
  lexicon: Lexicon,
): 'real' | 'said-differently' | 'none' {
  const index = lexicon.indexOf(word);
  if (index < 0) return 'none';
  const same = lexicon
    .readings(index)
    .some(
      ({ cards }) =>
        cards.length === parts.length && cards.every(({ id }, at) => id === parts[at]?.id),
    );
  return same ? 'real' : 'said-differently';
}

/**
 * The index of the commonest familiar word with these sounds, or -1. The
 * vowels of *cot* and *caught* count as one, since half of America says them
 * alike (not before r: *car*, *core*), and the schwa as the vowel of *cup*.
 */
function soundAlike(sounds: readonly Phoneme[], lexicon: Lexicon): number {
  let found = -1;
  for (const variant of heardAlike(sounds)) {
    for (const index of lexicon.saidAs(variant)) {
      if (lexicon.band(index) <= SOUND_ALIKE_BAND && (found < 0 || index < found)) found = index;
    }
  }
  return found;
}

/** Sounds as text, and the other ways to write what is heard alike. */
export function heardAlike(sounds: readonly Phoneme[]): readonly string[] {
  let texts: string[] = [''];
  sounds.forEach((sound, at) => {
    const beforeR = sounds[at + 1] === 'R';
    const other = beforeR ? undefined : HEARD_ALIKE.get(sound);
    const choices = other ? [sound, other] : [sound];
    texts = texts.flatMap((text) => choices.map((choice) => (text ? `${text} ${choice}` : choice)));
  });
  return texts;
}

const HEARD_ALIKE: ReadonlyMap<Phoneme, Phoneme> = new Map([
  ['AA', 'AO'],
  ['AO', 'AA'],
  ['AX', 'AH'],
  ['AH', 'AX'],
]);

/** Why the screen hides a word, in words fit for the wall. */
function screenedDetail({ verdict, reason }: Screened): string {
  if (reason) return reason;
  return verdict === 'ask' ? 'Yours to decide: it may raise a giggle.' : 'Not a word for class.';
}

function cardOf(id: string): Correspondence {
  const card = correspondenceById.get(id);
  if (!card) throw new Error(`there is no card ${id}`);
  return card;
}
