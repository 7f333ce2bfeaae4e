import {
  correspondenceById,
  correspondencesByGrapheme,
} from '../../../core/language/correspondences.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import { isHabit } from '../../../core/language/taught.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';
import type { JudgedWord } from '../../../core/texts/passage.ts';
import type { Settings } from '../../state/settings.ts';
import { habitNames } from '../../wording/card-name.ts';

/** What the reasons are said against: the order, the place in it, and how sounds are written. */
export interface Standing {
  readonly sequence: Sequence;
  readonly upTo: number;
  readonly notation: Settings['notation'];
}

/** Why a word of a text cannot be read yet, in a teacher's words; empty when it can. */
export function becauseSaid(word: JudgedWord, standing: Standing): string {
  const reasons = word.because.map((reason) => reasonSaid(reason, standing));
  const text = reasons.join('; ');
  if (word.source !== 'guess' || reasons.length === 0) return withHeart(text, word, standing);
  const what = word.name ? 'a name or unknown word' : 'unknown word';
  return word.because.includes('unknown') ? text : `${what}, guessed by its letters: ${text}`;
}

/** An irregular word that the order teaches as a whole says where. */
function withHeart(text: string, { word, because }: JudgedWord, { sequence, upTo }: Standing) {
  const step = stepOf(sequence, { kind: 'word', word });
  if (because.length === 0 || step === null || step <= upTo) return text;
  return `${text}; taught as a whole word at step ${step}`;
}

function reasonSaid(reason: string, standing: Standing): string {
  if (reason === 'unknown') return 'unknown word, with letters that no card has';
  if (reason.startsWith('irregular:')) return irregularSaid(reason.slice(10), standing);
  if (!reason.startsWith('habit:')) {
    return `${cardSaid(reason, standing)} ${comes({ kind: 'card', id: reason }, standing)}`;
  }
  const habit = reason.slice(6);
  if (!isHabit(habit)) return habit;
  const when = stepOf(standing.sequence, { kind: 'habit', habit });
  return when === null || when <= standing.upTo
    ? `${habitNames[habit]}: not taught`
    : `${habitNames[habit]}: from step ${when}`;
}

function irregularSaid(id: string, { notation }: Standing): string {
  if (!id.includes('=')) return `irregular: ${id} is not said as its parts are`;
  const card = correspondenceById.get(id);
  const grapheme = lettersOf(id);
  if (!card) return `irregular: ${grapheme} is read in a way of its own`;
  if (card.phonemes.length === 0) return `irregular: ${grapheme} is silent`;
  return `irregular: ${grapheme} says ${soundLabel(card.phonemes, notation)}`;
}

/** The letters of a card; with its sound, or its keyword, where it is not the first of these letters. */
function cardSaid(id: string, { notation }: Standing): string {
  const card = correspondenceById.get(id);
  const letters = lettersOf(id);
  const first = card && correspondencesByGrapheme.get(card.grapheme)?.[0];
  if (!card || !first || first.id === id) return letters;
  const said = soundLabel(card.phonemes, notation);
  const isTold = said !== soundLabel(first.phonemes, notation);
  return isTold || card.keyword === null
    ? `${letters} as ${said}`
    : `${letters} as in ${card.keyword}`;
}

function comes(item: { readonly kind: 'card'; readonly id: string }, standing: Standing): string {
  const step = stepOf(standing.sequence, item);
  if (step === null) return 'is in no step of the order';
  return step > standing.upTo ? `comes at step ${step}` : 'was taken out';
}

function lettersOf(id: string): string {
  const letters = id.slice(0, id.indexOf('='));
  return letters.includes('_') ? `${letters[0]} and silent e` : letters;
}
