import type { CardId } from '../../../core/language/card-id.ts';
import { soundStyle } from '../../state/accent.ts';
import './ready.css';
import { maxValue, minValue, number, object, pipe } from 'valibot';
import { readiness, readinessSaid, ruleSaid, USUAL_RULE } from '../../../core/ahead/ready.ts';
import { makeRandom } from '../../../core/random.ts';
import { cardsSaid } from '../../../core/story/card-said.ts';
import { remembered } from '../../device/remembered.ts';
import { mapFor, members, nameOf } from '../../state/class-now.ts';
import { modelDay } from '../../state/knowledge.ts';
import { progress } from '../../state/progress.ts';
import { say } from './wording.ts';

const share = pipe(number(), minValue(0.1), maxValue(1));

/** Her rule: how many of the children, and how sure; the usual one until she changes it. */
const rule = remembered('ready-rule', object({ share, sure: share }), { ...USUAL_RULE });

/** Whether the group at work is ready to move on: how many would read the newest cards tomorrow, and who would not. */
export function Ready() {
  const cards = newestCards();
  const rows = mapFor(
    members.value.map(({ id }) => ({ of: 'child', id })),
    cards,
    'read',
  );
  const children = rows.map(({ who, cells }) => ({
    id: who.id,
    cards: new Map(cells.map(({ card, estimate }) => [card, estimate])),
  }));
  const found = readiness(children, cards, rule.value, makeRandom(modelDay()));
  if (found === null) return null;
  const notation = soundStyle.value;
  const isSeen = rows.some(({ cells }) => cells.some(({ word }) => word !== 'not yet seen'));
  return (
    <section class="part ready" aria-labelledby="group-ready">
      <h3 id="group-ready">{say.ready.readyToMoveOn}</h3>
      <p>
        {say.ready.todaysCards(
          cardsSaid(cards, notation),
          readinessSaid(found),
          !isSeen && say.ready.nobodyHasReadThem,
          <b>{ruleSaid(found, rule.value)}</b>,
        )}
      </p>
      {found.notYet.length > 0 && (
        <table class="figures">
          <thead>
            <tr>
              <th scope="col">{say.ready.wouldProbablyNot}</th>
              <th scope="col">{say.ready.which}</th>
            </tr>
          </thead>
          <tbody>
            {found.notYet.slice(0, MOST_NAMED).map(({ child, cards: missed }) => (
              <tr key={child}>
                <th scope="row">{nameOf({ of: 'child', id: child })}</th>
                <td>
                  {missed.length > 0 ? cardsSaid(missed, notation) : say.ready.eachAloneProbably}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {found.notYet.length > MOST_NAMED && (
        <p class="quiet">{say.ready.andMore(found.notYet.length - MOST_NAMED)}</p>
      )}
      <p class="ready-rule quiet small">
        {say.ready.yourRule(
          <Share field="share" says={say.ready.ofTheChildren} />,
          <Share field="sure" says={say.ready.sure} />,
        )}
      </p>
      <p class="quiet small">{say.ready.aForecast}</p>
    </section>
  );
}

/** The cards of the last step that taught any. */
function newestCards(): readonly CardId[] {
  const { sequence, upTo } = progress.value;
  const cards = sequence.steps
    .slice(0, upTo)
    .map(({ items }) => items.flatMap((item) => (item.kind === 'card' ? item.id : [])));
  return cards.findLast((ids) => ids.length > 0) ?? [];
}

/** So many children are named; of most of a class it is the cards that are not ready. */
const MOST_NAMED = 8;

const SHARES = [0.5, 0.6, 0.7, 0.8, 0.9];

function Share({ field, says }: { readonly field: 'share' | 'sure'; readonly says: string }) {
  return (
    <label>
      <select
        value={rule.value[field]}
        onChange={(event) => {
          rule.value = { ...rule.peek(), [field]: Number(event.currentTarget.value) };
        }}
      >
        {SHARES.map((value) => (
          <option key={value} value={value}>
            {Math.round(value * 100)}%
          </option>
        ))}
      </select>{' '}
      {says}
    </label>
  );
}
