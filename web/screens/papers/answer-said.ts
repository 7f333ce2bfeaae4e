import { graphemeOf, lettersShown, soundsOf } from '../../../core/language/card-id.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import type { PaperAnswer, PapersWord } from '../../../core/log/event.ts';
import { readAnswer } from '../../../core/papers/attempts.ts';
import { isSpelled } from '../../../core/papers/spelling-shown.ts';
import type { CardVerdict } from '../../../core/spelling/attempt.ts';
import { inPlainWords } from '../../../core/spelling/plain-words.ts';
import { accent, soundStyle } from '../../state/accent.ts';
import { say } from './wording.ts';

/** What an answer shows at a glance: right, heard but spelled otherwise, a sound not heard, or none of these. */
export type AnswerGlance = 'right' | 'heard' | 'missed' | 'none';

/** An answer as a field of the grid shows it. */
export interface Shown {
  readonly glance: AnswerGlance;
  /** What was written, or what is there instead. */
  readonly text: string;
  /** The first thing to be said of it; empty when it is right. */
  readonly note: string;
}

/** An answer at a glance. */
export function shownAnswer(answer: PaperAnswer, said: PapersWord): Shown {
  if (answer.kind === 'absent') return { glance: 'none', text: say.answerSaid.away, note: '' };
  const read = readAnswer(answer, said, accent.value);
  if (!read) return { glance: 'none', text: '', note: '' };
  if (!read.read) {
    const broke = said.cards.filter((_, at) => read.cards[at] === null).map(lettersShown);
    if (broke.length === 0) return { glance: 'right', text: said.word, note: '' };
    return { glance: 'missed', text: '–', note: say.answerSaid.broke(broke.join(', ')) };
  }
  const { wordRight, answer: what, cards } = read.read;
  if (wordRight) return { glance: 'right', text: said.word, note: '' };
  if (what === 'blank') return { glance: 'none', text: '–', note: say.answerSaid.leftBlank };
  if (what === 'illegible')
    return { glance: 'none', text: read.wrote ?? '', note: say.answerSaid.cannotBeRead };
  const glance = what === 'another-word' || cards.some(({ heard }) => !heard) ? 'missed' : 'heard';
  return { glance, text: read.wrote ?? '', note: firstNote(cards, what === 'another-word') };
}

/** One plain sentence on an answer. */
export function sentenceOf(answer: PaperAnswer, said: PapersWord): string {
  if (answer.kind === 'absent') return say.answerSaid.wasAway;
  const read = readAnswer(answer, said, accent.value);
  if (!read) return say.answerSaid.notReadYet;
  if (read.read) return sentence(inPlainWords(read.read));
  const broke = said.cards.filter((_, at) => read.cards[at] === null).map(lettersShown);
  return broke.length === 0
    ? say.answerSaid.right
    : say.answerSaid.brokeTheRest(broke.join(say.answerSaid.and));
}

/** What is said under one card: fine, spelled otherwise, another sound, left out. */
export function cardSaid(card: CardVerdict): string {
  if (card.verdict === 'same') return say.answerSaid.fine;
  const grapheme = lettersShown(card.id);
  if (card.verdict === 'left-out') return say.answerSaid.leftOut(grapheme);
  if (card.verdict === 'turned') return say.answerSaid.turned(grapheme);
  if (card.verdict === 'order') return say.answerSaid.anotherOrder;
  return `${grapheme} → ${card.letters}`;
}

/** How a card stands: its sound heard and spelled, heard only, or not heard. */
export function glanceOf(card: CardVerdict): AnswerGlance {
  if (!card.heard) return 'missed';
  return isSpelled(card) ? 'right' : 'heard';
}

/** A card's sound for her: /sh/. */
export function soundOf(said: PapersWord, at: number): string {
  const id = said.cards[at];
  return id === undefined ? '' : soundLabel(soundsOf(id), soundStyle.value, graphemeOf(id));
}

function firstNote(cards: readonly CardVerdict[], isOther: boolean): string {
  if (isOther) return say.answerSaid.anotherWord;
  const missed = cards.find(({ heard }) => !heard);
  const other = missed ?? cards.find(({ verdict }) => verdict !== 'same');
  if (!other) return say.answerSaid.lettersAdded;
  const grapheme = lettersShown(other.id);
  if (other.verdict === 'other-sound') return say.answerSaid.as(grapheme, other.letters);
  return other.verdict === 'same-sound' ? say.answerSaid.notYet(grapheme) : cardSaid(other);
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
