import type { ChildId } from '../../../core/ids.ts';
import { lettersShown } from '../../../core/language/card-id.ts';
import type { PapersRecord } from '../../../core/log/papers-record.ts';
import type { PaperAttempt } from '../../../core/papers/attempts.ts';
import {
  type CommonSlip,
  cardsShown,
  commonSlips,
  paperScore,
  sumOf,
} from '../../../core/papers/spelling-shown.ts';
import { habitName } from '../../../core/spelling/plain-words.ts';
import { SoundedCard } from '../../controls/sounded-card.tsx';
import { today } from '../../state/day.ts';
import { attemptsOfPile, childrenOfPile, piles } from '../../state/papers.ts';
import { dayName } from '../../wording/day-name.ts';
import { Attempts } from './attempts.tsx';
import { shareSaid } from './share-said.ts';
import { SoundBySound } from './sound-by-sound.tsx';
import { say } from './wording.ts';

/** So many slips matter next. */
const NEXT = 3;

/** What a pile says: the slips that matter next, and for each child what it hears and what it knows. */
export function Shows({ pile }: { readonly pile: PapersRecord }) {
  const attempts = attemptsOfPile(pile);
  if (attempts.length === 0) return null;
  const children = childrenOfPile(pile);
  const nameOf = new Map(children.map(({ id, name }) => [id, name]));
  const seen = new Set(attempts.map(({ child }) => child));
  const slips = commonSlips(attempts).slice(0, NEXT);
  const before = piles.value.flatMap((each) =>
    attemptsOfPile(each).map((attempt) => ({
      attempt,
      when: each.day === null ? null : dayName(each.day, today()),
    })),
  );
  return (
    <section class="papers-shows not-printed" aria-labelledby="papers-shows">
      <h2 id="papers-shows">{say.shows.whatTheySay}</h2>
      {slips.length > 0 && (
        <ol class="papers-slips">
          {slips.map((slip) => (
            <li key={JSON.stringify([slip.need, slip.about])}>
              <Slip slip={slip} nameOf={nameOf} />
            </li>
          ))}
        </ol>
      )}
      <div class="papers-figures">
        <table>
          <thead>
            <tr>
              <th scope="col">{say.shows.child}</th>
              <th scope="col">{say.shows.soundsHeard}</th>
              <th scope="col">{say.shows.spellingsKnownOfThose}</th>
              <th scope="col">{say.shows.wordsRight}</th>
              <th scope="col">{say.shows.letterSequences}</th>
            </tr>
          </thead>
          <tbody>
            {children
              .filter(({ id }) => seen.has(id))
              .map(({ id, name }) => (
                <ChildFigures
                  key={id}
                  name={name}
                  attempts={attempts.filter(({ child }) => child === id)}
                >
                  {before.filter(({ attempt }) => attempt.child === id)}
                </ChildFigures>
              ))}
          </tbody>
        </table>
      </div>
      <details class="papers-figures">
        <summary>{say.shows.soundBySound}</summary>
        <SoundBySound attempts={attempts} />
      </details>
      <p class="quiet small">{say.shows.hearingASound}</p>
    </section>
  );
}

function Slip({
  slip: { need, about, children, examples, byHeart },
  nameOf,
}: {
  readonly slip: CommonSlip;
  readonly nameOf: ReadonlyMap<ChildId, string>;
}) {
  const shown = examples.filter(({ wrote }) => wrote !== '');
  return (
    <>
      <p class="papers-slip-about">
        {'card' in about ? (
          <SoundedCard id={about.card} />
        ) : (
          <strong>{habitName(about.habit)}</strong>
        )}{' '}
        {need === 'ear' ? say.shows.notHeard : say.shows.heardSpelledOtherwise}
      </p>
      <p>{children.map(({ child }) => nameOf.get(child) ?? '').join(', ')}</p>
      {shown.length > 0 && (
        <p class="quiet small">
          {shown.map(({ word, wrote }) => say.shows.for(wrote, word)).join(', ')}
        </p>
      )}
      <p class="quiet small">
        {need === 'ear' ? say.shows.sayTheWordSlowly : say.shows.theEarIsRight}
        {'card' in about && byHeart.length > 0 && (
          <> {say.shows.inTheFollowsNo(byHeart.join(', '), lettersShown(about.card))}</>
        )}
      </p>
    </>
  );
}

function ChildFigures({
  name,
  attempts,
  children: before,
}: {
  readonly name: string;
  readonly attempts: readonly PaperAttempt[];
  readonly children: readonly { readonly attempt: PaperAttempt; readonly when: string | null }[];
}) {
  const cards = cardsShown(attempts);
  const { words, sequences } = paperScore(attempts);
  return (
    <tr>
      <th scope="row">
        <details>
          <summary>{name}</summary>
          <Attempts attempts={before} />
          <SoundBySound attempts={attempts} />
        </details>
      </th>
      <td>{shareSaid(sumOf(cards.map(({ hears }) => hears)))}</td>
      <td>{shareSaid(sumOf(cards.map(({ knows }) => knows)))}</td>
      <td>{shareSaid(words)}</td>
      <td>{shareSaid(sequences)}</td>
    </tr>
  );
}
