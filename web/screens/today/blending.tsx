import { useMemo } from 'preact/hooks';
import { makeBoardLink } from '../../../core/boards/shapes/board-link.ts';
import type { Drill } from '../../../core/drills/drill.ts';
import { Card } from '../../controls/card.tsx';
import { FirstTime } from '../../controls/first-time.tsx';
import { Hidden } from '../../controls/hidden.tsx';
import { readyEngine } from '../../state/engine-ready.ts';
import { taught } from '../../state/progress.ts';
import { linkTo } from '../../state/route.ts';
import { surveyOf } from '../../state/survey.ts';
import { cardName } from '../../wording/card-name.ts';
import { BoardPractice } from './board-practice.tsx';
import { dayView } from './day-view.ts';
import { Flips } from './flips.tsx';
import { OwnWord } from './own-word.tsx';
import { PartHead } from './part-head.tsx';
import { WishChoices } from './wish-choices.tsx';
import { say } from './wording.ts';

const pileNames = [say.blending.beginning, say.blending.vowel, say.blending.ending] as const;

/** Part 3: the board with its piles, and the run of flips over it. */
export function Blending({ drill }: { readonly drill: Drill }) {
  const ready = readyEngine();
  const { board } = drill;
  const { kind } = dayView.value;
  const survey = useMemo(
    () => (ready ? surveyOf(board, taught.peek(), ready) : null),
    [ready, board],
  );
  return (
    <section class="part blending" aria-labelledby="part-blending">
      <PartHead part="blending" drill={drill} />
      <div class="board">
        <div class="piles">
          {board.piles.map((pile, place) => (
            <div key={place} class="pile">
              <h3>{pileTitle(pile.length, place, board.piles.length)}</h3>
              <p class="pile-cards">
                {pile.map((id) => (
                  <span key={id} role="img" aria-label={cardName(id)} title={cardName(id)}>
                    <Card id={id} />
                  </span>
                ))}
              </p>
            </div>
          ))}
        </div>
        <BoardPractice drill={drill} />
        {survey && <Hidden board={board} counts={survey} />}
        {survey && (
          <a class="button plain" href={linkTo('board', makeBoardLink(board))}>
            {say.blending.openThisBoard}
          </a>
        )}
      </div>
      <div class="run">
        <div class="run-head">
          {(kind === 'fresh' || kind === 'tomorrow') && (
            <>
              <WishChoices />
              <OwnWord drill={drill} />
            </>
          )}
          <p class="quiet small">
            <span class="word real">{say.blending.underlined}</span>
            {say.blending.realWords}
          </p>
        </div>
        {drill.run.length > 0 && <FirstTime of="flip" />}
        <Flips drill={drill} />
      </div>
    </section>
  );
}

function pileTitle(count: number, place: number, piles: number): string {
  const name = piles === 3 ? (pileNames[place] ?? say.blending.card) : say.blending.card;
  return `${count} ${name}${count === 1 ? '' : 's'}`;
}
