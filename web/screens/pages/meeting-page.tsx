import { useMemo } from 'preact/hooks';
import { countWords, type MapCell } from '../../../core/facts/class-map.ts';
import { checksOf } from '../../../core/log/check-record.ts';
import type { CheckRecord, Child } from '../../../core/log/class-state.ts';
import { Card } from '../../controls/card.tsx';
import { PracticeNote } from '../../controls/check-note.tsx';
import { ConfusionTable } from '../../controls/confusion-table.tsx';
import { Sign } from '../../controls/sign.tsx';
import { today } from '../../state/day.ts';
import { knowledge } from '../../state/knowledge.ts';
import { ownCells, ownConfusions, placeOfChild } from '../../state/of-child.ts';
import { classState } from '../../state/open-class.ts';
import { scoreOf } from '../../state/scored.ts';
import { cardName } from '../../wording/card-name.ts';
import { kindNames } from '../../wording/check-names.ts';
import { ratesOf } from '../../wording/check-rates.ts';
import { counted } from '../../wording/counted.ts';
import { dayName, whenSaid } from '../../wording/day-name.ts';
import { shareSaid } from '../../wording/said.ts';
import { HerLine } from './her-line.tsx';

/** One page on a child: what is secure, growing and shaky, with how sure that is, in plain words. */
export function MeetingPage({ child }: { readonly child: Child }) {
  const known = knowledge.value;
  const cells = useMemo(() => ownCells(child), [child, known, classState.value]);
  const of = (word: MapCell['word']) => cells.filter((cell) => cell.word === word);
  const counts = countWords(cells);
  const { name: group, progress } = placeOfChild(child);
  const confusions = ownConfusions(child).slice(0, MOST_CONFUSIONS);
  const checks = checksOf(classState.value, child.id).filter(({ ended }) => ended !== null);
  return (
    <article class="paper-page">
      <header>
        <h2>{child.name}</h2>
        <p class="quiet">
          Reading sounds and spellings, {dayName(today(), today())} · {group}, step {progress.upTo}{' '}
          of {progress.sequence.steps.length}
        </p>
      </header>
      <p class="page-lead">
        Of {counted(cells.length, 'spelling')} taught so far: <b>{counts.secure}</b> secure,{' '}
        <b>{counts.growing}</b> growing, <b>{counts.shaky}</b> shaky, and{' '}
        <b>{counts['not yet seen']}</b> not yet seen from {child.name} alone.
      </p>
      <div class="page-columns">
        <section>
          <h3>
            <Sign word="shaky" /> Shaky
          </h3>
          <Shaky cells={of('shaky').toSorted(byShare)} />
        </section>
        <section>
          <h3>What was said instead</h3>
          {confusions.length === 0 ? (
            <p class="quiet">Nothing was noted.</p>
          ) : (
            <ConfusionTable confusions={confusions} />
          )}
        </section>
      </div>
      <section>
        <h3>
          <Sign word="growing" /> Growing
        </h3>
        <Growing cells={of('growing').toSorted(byShare)} />
      </section>
      <div class="page-columns">
        <section>
          <h3>
            <Sign word="secure" /> Secure
          </h3>
          <Cards cells={of('secure')} none="Nothing is sure enough yet to be called secure." />
        </section>
        <section>
          <h3>
            <Sign word="not yet seen" /> Not yet seen
          </h3>
          <Cards cells={of('not yet seen')} none="Everything taught was seen." />
        </section>
      </div>
      <section>
        <h3>Short checks</h3>
        {checks.length === 0 ? (
          <p class="quiet">None yet.</p>
        ) : (
          <ul>
            {checks
              .toReversed()
              .slice(0, MOST_CHECKS)
              .map((check) => (
                <li key={check.id}>{checkSaid(check)}</li>
              ))}
          </ul>
        )}
      </section>
      <HerLine
        page="meeting"
        about={child.id}
        placeholder="What you want to say or ask at the meeting"
      />
      <p class="small">
        How sure this is: each share is an estimate from what was noted in daily practice and short
        checks. In nine of ten cases the true share lies in the range beside it; few readings make a
        wide range. Secure begins where even the low end reaches the mark that was set.
      </p>
      <PracticeNote />
    </article>
  );
}

/** So many are said on the page: the shakiest, the most frequent, the latest. */
const MOST_SHAKY = 10;
const MOST_CONFUSIONS = 6;
const MOST_CHECKS = 5;

function checkSaid(check: CheckRecord): string {
  const { form, day } = check;
  const score = scoreOf(check);
  const { right, asked, soundsRight, soundsAsked } = score;
  const isWords = form.kind === 'nonsense-words';
  const sounds = isWords ? `, ${soundsRight} of ${soundsAsked} sounds` : '';
  const rates = ratesOf(check, score);
  const rate = rates ? `, ${rates.right} right a minute` : '';
  return `${kindNames[form.kind]} ${whenSaid(day, today())}: ${right} of ${asked} right${sounds}${rate}.`;
}

function byShare(one: MapCell, other: MapCell): number {
  return one.estimate.p - other.estimate.p;
}

/** Cards with how often they are read rightly, how sure that is, and from how many readings. */
function Shaky({ cells }: { readonly cells: readonly MapCell[] }) {
  if (cells.length === 0) return <p class="quiet">Nothing is shaky.</p>;
  const more = cells.slice(MOST_SHAKY);
  return (
    <>
      <table class="sure-table">
        <thead>
          <tr>
            <th scope="col">Card</th>
            <th scope="col">Read rightly</th>
            <th scope="col">Likely between</th>
            <th scope="col">Seen</th>
          </tr>
        </thead>
        <tbody>
          {cells.slice(0, MOST_SHAKY).map(({ card, estimate: { p, low, high, n } }) => (
            <tr key={card}>
              <th scope="row">
                <span class="for-ears">{cardName(card)}</span>
                <Card id={card} />
              </th>
              <td>{tenthsSaid(p)}</td>
              <td>
                {shareSaid(low)} and {shareSaid(high)}
              </td>
              <td>{counted(n, 'time')}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {more.length > 0 && (
        <>
          <p class="small">Shaky as well:</p>
          <Cards cells={more} none="" />
        </>
      )}
    </>
  );
}

/** Cards on their way, each with its share and range. */
function Growing({ cells }: { readonly cells: readonly MapCell[] }) {
  if (cells.length === 0) return <p class="quiet">Nothing in between just now.</p>;
  return (
    <ul class="growing-cards">
      {cells.map(({ card, estimate: { p, low, high } }) => (
        <li key={card}>
          <span class="for-ears">{cardName(card)}</span>
          <Card id={card} />
          <span>
            {tenthsSaid(p)}{' '}
            <span class="quiet">
              ({shareSaid(low)}–{shareSaid(high)})
            </span>
          </span>
        </li>
      ))}
    </ul>
  );
}

function tenthsSaid(share: number): string {
  return `${Math.round(share * 10)} of 10`;
}

/** Cards alone, in a row. */
function Cards({ cells, none }: { readonly cells: readonly MapCell[]; readonly none: string }) {
  if (cells.length === 0) return <p class="quiet">{none}</p>;
  return (
    <ul class="page-cards">
      {cells.map(({ card }) => (
        <li key={card}>
          <span class="for-ears">{cardName(card)}</span>
          <Card id={card} />
        </li>
      ))}
    </ul>
  );
}
