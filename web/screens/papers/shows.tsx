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
      <h2 id="papers-shows">What they say</h2>
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
              <th scope="col">Child</th>
              <th scope="col">Sounds heard</th>
              <th scope="col">Spellings known, of those heard</th>
              <th scope="col">Words right</th>
              <th scope="col">Letter sequences</th>
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
        <summary>Sound by sound</summary>
        <SoundBySound attempts={attempts} />
      </details>
      <p class="quiet small">
        Hearing a sound and knowing its spelling are two things; neither is a score in reading.
        Practice monitoring, not a diagnosis.
      </p>
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
        {need === 'ear' ? 'not heard' : 'heard, spelled otherwise'}
      </p>
      <p>{children.map(({ child }) => nameOf.get(child) ?? '').join(', ')}</p>
      {shown.length > 0 && (
        <p class="quiet small">
          {shown.map(({ word, wrote }) => `${wrote} for ${word}`).join(', ')}
        </p>
      )}
      <p class="quiet small">
        {need === 'ear'
          ? 'Say the word slowly and count its sounds first; then write.'
          : 'The ear is right: practice the spelling.'}
        {'card' in about && byHeart.length > 0 && (
          <>
            {' '}
            In {byHeart.join(', ')} the {lettersShown(about.card)} follows no rule: learn it by
            heart.
          </>
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
