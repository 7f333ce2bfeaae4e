import { type CardId, lettersShown, soundsOf } from '../../../core/language/card-id.ts';
import {
  correspondenceById,
  correspondencesByGrapheme,
} from '../../../core/language/correspondences.ts';
import type { SoundStyle } from '../../../core/language/phonemes.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import type { Item, Sequence } from '../../../core/sequence/sequence.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';
import type { Because, JudgedWord } from '../../../core/texts/passage.ts';
import { habitNames } from '../../wording/card-name.ts';
import { say } from './wording.ts';

/** What the reasons are said against: the order, the place in it, and how sounds are written. */
export interface ReadingGroup {
  readonly sequence: Sequence;
  readonly upTo: number;
  readonly notation: SoundStyle;
}

/** Why a word of a text cannot be read yet, in a teacher's words; empty when it can. */
export function becauseSaid(word: JudgedWord, standing: ReadingGroup): string {
  const reasons = word.because.map((reason) => reasonSaid(reason, standing));
  const text = reasons.join('; ');
  if (word.source !== 'guess' || reasons.length === 0) return withHeart(text, word, standing);
  const what = word.name ? say.because.aNameOrUnknown : say.because.unknownWord;
  return word.because.some(({ kind }) => kind === 'unknown')
    ? text
    : say.because.guessedByItsLetters(what, text);
}

/** An irregular word that the order teaches as a whole says where. */
function withHeart(text: string, { word, because }: JudgedWord, { sequence, upTo }: ReadingGroup) {
  const step = stepOf(sequence, { kind: 'word', word });
  if (because.length === 0 || step === null || step <= upTo) return text;
  return say.because.taughtAsAWhole(text, step);
}

function reasonSaid(reason: Because, standing: ReadingGroup): string {
  switch (reason.kind) {
    case 'unknown':
      return say.because.unknownWithLetters;
    case 'irregular-word':
      return say.because.irregularIsNotSaid(reason.word);
    case 'irregular':
      return irregularSaid(reason.id, standing);
    case 'card':
      return `${cardSaid(reason.id, standing)} ${comes(reason, standing)}`;
    case 'habit': {
      const when = stepOf(standing.sequence, reason);
      return when === null || when <= standing.upTo
        ? say.because.notTaught(habitNames[reason.habit])
        : say.because.fromStep(habitNames[reason.habit], when);
    }
  }
}

function irregularSaid(id: CardId, { notation }: ReadingGroup): string {
  const letters = lettersShown(id);
  if (!correspondenceById.has(id)) return say.because.irregularIsRead(letters);
  const sounds = soundsOf(id);
  if (sounds.length === 0) return say.because.irregularIsSilent(letters);
  return say.because.irregularSays(letters, soundLabel(sounds, notation));
}

/** The letters of a card; with its sound, or its keyword, where it is not the first of these letters. */
function cardSaid(id: CardId, { notation }: ReadingGroup): string {
  const card = correspondenceById.get(id);
  const letters = lettersShown(id);
  const first = card && correspondencesByGrapheme.get(card.grapheme)?.[0];
  if (!card || !first || first.id === id) return letters;
  const said = soundLabel(card.phonemes, notation);
  const isTold = said !== soundLabel(first.phonemes, notation);
  return isTold || card.keyword === null
    ? say.because.as(letters, said)
    : say.because.asIn(letters, card.keyword);
}

function comes(item: Item, { sequence, upTo }: ReadingGroup): string {
  const step = stepOf(sequence, item);
  if (step === null) return say.because.isInNoStep;
  return step > upTo ? say.because.comesAtStep(step) : say.because.wasTakenOut;
}
