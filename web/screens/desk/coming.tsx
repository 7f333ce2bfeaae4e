import { type CardId, isSightId } from '../../../core/language/card-id.ts';
import { soundStyle } from '../../state/accent.ts';
import './coming.css';
import { pieceKey } from '../../../core/boards/shapes/pieces.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import type { Moment } from '../../../core/warm-up/moments.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { PieceCard } from '../../controls/piece-card.tsx';
import { moments } from '../../warm-up/running.ts';
import { askedSaid } from '../../wording/asked-said.ts';
import { say } from './wording.ts';

/** The next two, so that she knows them before the children do. */
export function Coming({ now }: { readonly now: Running }) {
  const { standing, dictated } = now;
  if (standing.dictating !== null) {
    const words = dictated.slice(standing.dictating + 1, standing.dictating + 3);
    return (
      <section class="desk-box" aria-label={say.coming.coming}>
        <h2>{say.coming.next}</h2>
        {words.length === 0 ? (
          <p>{say.coming.thenTheBlendingDrill}</p>
        ) : (
          words.map((word) => <p key={word}>{word}</p>)
        )}
      </section>
    );
  }
  const next = momentAt({ ...standing, at: standing.at + 1 }, moments.value);
  const then = momentAt({ ...standing, at: standing.at + 2 }, moments.value);
  const here = momentAt(standing, moments.value);
  return (
    <section class="desk-box" aria-label={say.coming.coming}>
      <h2>{say.coming.next}</h2>
      <Small moment={next} before={here} />
      {next && (
        <div class="then">
          <h2>{say.coming.afterThat}</h2>
          <Small moment={then} before={next} />
        </div>
      )}
    </section>
  );
}

function Small({
  moment,
  before,
}: {
  readonly moment: Moment | undefined;
  readonly before: Moment | undefined;
}) {
  if (!moment) return <p class="small-row">{say.coming.theEnd}</p>;
  if (moment.part === 'auditory') {
    return <p class="small-row small-sound">{askedSaid(moment.sound)}</p>;
  }
  const turned = (id: CardId) =>
    before?.part === 'blending' && moment.part === 'blending' && !before.flip.cards.includes(id);
  return (
    <p class="small-row">
      {moment.pieces.map((piece, place) => (
        <span key={`${place} ${pieceKey(piece)}`} class={turned(piece.id) ? 'turned' : ''}>
          <PieceCard piece={piece} />
        </span>
      ))}
      <span class="quiet small-row-word">
        {moment.part === 'blending'
          ? moment.flip.kind === 'real'
            ? say.coming.real
            : say.coming.nonsense
          : soundOfCard(moment.id)}
      </span>
    </p>
  );
}

/** What a card says; of a word known by sight only that it is one. */
function soundOfCard(id: CardId): string {
  if (isSightId(id)) return say.coming.bySight;
  const card = correspondenceById.get(id);
  return soundLabel(card?.phonemes ?? [], soundStyle.value, card?.grapheme);
}
