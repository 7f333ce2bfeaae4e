import { isSightId, lettersShown } from '../../../core/language/card-id.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import { cardsOf, type Moment } from '../../../core/warm-up/moments.ts';
import type { Standing, Turn } from '../../../core/warm-up/standing.ts';
import { TurnPicture } from '../../controls/turn-picture.tsx';
import { soundStyle } from '../../state/accent.ts';
import { askedSaid } from '../../wording/asked-said.ts';
import { say } from './wording.ts';

const names: Readonly<Record<Turn, string>> = {
  my: say.turnSaid.myTurn,
  our: say.turnSaid.ourTurn,
  your: say.turnSaid.yourTurn,
};

/** Whose turn it is in a correction, and in words what to do. */
export function TurnSaid({
  moment,
  standing,
}: {
  readonly moment: Moment;
  readonly standing: Standing;
}) {
  const turn = standing.turn ?? 'my';
  return (
    <div class="desk-turn" role="status">
      <TurnPicture turn={turn} class="desk-turn-picture" />
      <p>
        <b>{names[turn]}:</b> {told(turn, whatOf(moment, standing))}
      </p>
    </div>
  );
}

function told(turn: Turn, what: string): string {
  if (turn === 'my') return say.turnSaid.youSayTheyListen(what);
  return turn === 'our' ? say.turnSaid.sayTogether(what) : say.turnSaid.theySayAlone(what);
}

/** What is said at this step: a sound, or the whole word. */
function whatOf(moment: Moment, { shown, joined }: Standing): string {
  const notation = soundStyle.value;
  if (moment.part === 'auditory') return askedSaid(moment.sound);
  if (moment.part === 'visual' && isSightId(moment.id)) {
    const word = lettersShown(moment.id);
    return say.turnSaid.andSpellIt(word, [...word].join(' – '));
  }
  if (moment.part === 'blending' && joined) return say.turnSaid.sweeping(moment.flip.word);
  const id = cardsOf(moment)[moment.part === 'visual' ? 0 : shown - 1];
  const card = id && correspondenceById.get(id);
  if (!card) return say.turnSaid.theSound;
  const parts = card.kind === 'cluster' ? card.parts : [card.id];
  return parts
    .map((part) => soundLabel(correspondenceById.get(part)?.phonemes ?? [], notation))
    .join(' ');
}
