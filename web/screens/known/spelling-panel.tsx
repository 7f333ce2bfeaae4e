import type { MapCell } from '../../../core/facts/class-map.ts';
import type { Child } from '../../../core/log/class-state.ts';
import type { CardShown } from '../../../core/papers/spelling-shown.ts';
import { cardsSaid, listSaid } from '../../../core/story/card-said.ts';
import { SoundedCard } from '../../controls/sounded-card.tsx';
import { soundStyle } from '../../state/accent.ts';
import { cellsOf } from '../../state/of-child.ts';
import { type ChildSpelling, spellingOf } from '../../state/papers.ts';
import { linkTo } from '../../state/route.ts';
import { say } from './wording.ts';

/** So many cards and words stand in the panel. */
const MOST_CARDS = 6;
const MOST_WORDS = 3;

/** What was seen of a child's spelling, beside its reading: by its papers hearing and spelling apart, and by the auditory part. */
export function SpellingPanel({ child }: { readonly child: Child }) {
  const onPaper = spellingOf(child.id);
  const { taught, beyond } = cellsOf(child, 'spell');
  const asked = [...taught, ...beyond].filter(({ seen }) => seen.right + seen.missed > 0);
  return (
    <section class="part spelling-panel" aria-labelledby="child-spelling">
      <h3 id="child-spelling">{say.spellingPanel.spelling}</h3>
      {onPaper !== null && <OnPaper spelling={onPaper} />}
      {onPaper === null && asked.length > 0 && <Asked cells={asked} />}
      {onPaper === null && asked.length === 0 && (
        <p class="quiet">{say.spellingPanel.nothingOfSSpelling(child.name)}</p>
      )}
      <p class="not-printed">
        <a href={linkTo('papers')}>{say.spellingPanel.spellingPapers}</a>
      </p>
    </section>
  );
}

function OnPaper({ spelling }: { readonly spelling: ChildSpelling }) {
  const { papers, words, hears, knows, missed } = spelling;
  const rows = spelling.cards
    .filter((card) => missedOf(card) > 0)
    .sort((one, other) => missedOf(other) - missedOf(one));
  return (
    <>
      <p class="quiet small">
        {say.spellingPanel.papersWordsOfSounds(
          papers,
          words,
          hears.times,
          hears.of,
          knows.times,
          knows.of,
        )}
      </p>
      {rows.length > 0 && (
        <table class="figures">
          <thead>
            <tr>
              <th scope="col">{say.spellingPanel.sound}</th>
              <th scope="col">{say.spellingPanel.hearsIt}</th>
              <th scope="col">{say.spellingPanel.knowsTheSpelling}</th>
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, MOST_CARDS).map(({ id, hears, knows }) => (
              <tr key={id}>
                <th scope="row">
                  <SoundedCard id={id} />
                </th>
                <td>{say.spellingPanel.of(hears.times, hears.of)}</td>
                <td>{knows.of === 0 ? '–' : say.spellingPanel.ofHeard(knows.times, knows.of)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {rows.length > MOST_CARDS && (
        <p class="quiet small">{say.spellingPanel.andSoundsMore(rows.length - MOST_CARDS)}</p>
      )}
      {missed.length > 0 && (
        <p>
          {say.spellingPanel.wrote(
            listSaid(
              missed
                .slice(0, MOST_WORDS)
                .map(({ word, wrote }) =>
                  wrote === ''
                    ? say.spellingPanel.nothingFor(word)
                    : say.spellingPanel.for(wrote, word),
                ),
            ),
          )}
        </p>
      )}
    </>
  );
}

/** What the auditory part has shown, where there is no paper. */
function Asked({ cells }: { readonly cells: readonly MapCell[] }) {
  const right = cells.reduce((sum, { seen }) => sum + seen.right, 0);
  const missed = cells.filter(({ seen }) => seen.missed > 0);
  const asked = right + missed.reduce((sum, { seen }) => sum + seen.missed, 0);
  const cards = cardsSaid(
    missed.toSorted((one, other) => other.seen.missed - one.seen.missed).map(({ card }) => card),
    soundStyle.value,
  );
  return (
    <p>
      {say.spellingPanel.wroteOfSpellingsRight(
        right,
        asked,
        missed.length > 0 && say.spellingPanel.missed(cards),
      )}
    </p>
  );
}

/** How often a sound was not heard, or heard and spelled otherwise. */
function missedOf({ hears, knows }: CardShown): number {
  return hears.of - hears.times + knows.of - knows.times;
}
