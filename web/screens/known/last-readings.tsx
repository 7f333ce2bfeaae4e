import type { ComponentChildren } from 'preact';
import { type CardAsRead, cardReadings } from '../../../core/facts/card-reading.ts';
import { heardSaid } from '../../../core/facts/heard-said.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { makeDay } from '../../../core/learners/day.ts';
import type { Observation } from '../../../core/learners/observation.ts';
import { LastThree } from '../../controls/last-three.tsx';
import { ReadWord } from '../../controls/read-word.tsx';
import { soundStyle } from '../../state/accent.ts';
import { dayShort } from '../../wording/day-name.ts';
import { say } from './wording.ts';

/** So many are looked at one by one. */
const MOST = 8;

/** The last readings of one card, the newest first: when, in which word, and what was said. */
export function LastOfCard({
  card,
  readings,
}: {
  readonly card: CardId;
  readonly readings: readonly CardAsRead[];
}) {
  return (
    <Lines
      all={readings.map(({ day, outcome, heard, word, at, inCheck }) => ({
        day: makeDay(day),
        mark: <Mark outcome={outcome} />,
        word: <ReadWord cards={word} missed={outcome === 'missed' ? at : null} />,
        said: saidOf(outcome, heard, card),
        inCheck,
      }))}
    />
  );
}

/** The last words of a child, the newest first. */
export function LastOfChild({ words }: { readonly words: readonly Observation[] }) {
  return (
    <Lines
      all={words.map((one) => {
        const missed = cardReadings(one).find(({ outcome }) => outcome === 'missed');
        const outcome = one.right ? 'right' : missed === undefined ? 'unclear' : 'missed';
        const card = one.cards[missed?.at ?? 0] as CardId;
        return {
          day: makeDay(one.day),
          mark: <Mark outcome={outcome} />,
          word: <ReadWord cards={one.cards} missed={missed?.at ?? null} />,
          said: saidOf(outcome, one.heard, card),
          inCheck: one.from === 'check',
        };
      })}
    />
  );
}

interface Line {
  readonly day: string;
  readonly mark: ComponentChildren;
  readonly word: ComponentChildren;
  readonly said: string;
  readonly inCheck: boolean;
}

/** Oldest first come in; the newest stand above. */
function Lines({ all }: { readonly all: readonly Line[] }) {
  const shown = all.slice(-MOST).reverse();
  const earlier = all.length - shown.length;
  return (
    <>
      <ul class="last-readings">
        {shown.map(({ day, mark, word, said, inCheck }, at) => (
          <li key={at}>
            {mark}
            <span class="quiet">{dayShort(day)}</span>
            <span>
              {word}
              {said !== '' && <span>, {said}</span>}
              {inCheck && <span class="quiet"> {say.lastReadings.inACheck}</span>}
            </span>
          </li>
        ))}
      </ul>
      {earlier > 0 && <p class="quiet small">{say.lastReadings.andBefore(earlier)}</p>}
    </>
  );
}

function Mark({ outcome }: { readonly outcome: CardAsRead['outcome'] }) {
  if (outcome !== 'unclear') return <LastThree last={[outcome]} />;
  return <span class="map-unclear">?</span>;
}

function saidOf(outcome: CardAsRead['outcome'], heard: string | null, card: CardId): string {
  if (outcome === 'unclear') return say.lastReadings.wentWrongNotSaid;
  return outcome === 'right' || heard === null ? '' : heardSaid(heard, card, soundStyle.value);
}
