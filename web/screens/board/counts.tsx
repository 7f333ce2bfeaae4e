import { useMemo } from 'preact/hooks';
import { type Tally, tallyOf } from '../../../core/boards/judge/card-gain.ts';
import { hiddenCount } from '../../../core/boards/judge/hidden-count.ts';
import { judgeWord } from '../../../core/boards/judge/judge.ts';
import { cardsAt, outcomeAt, type WordTable } from '../../../core/boards/judge/word-table.ts';
import { hiddenInWords } from '../../wording/hidden-words.ts';
import type { BoardDesk } from './desk.ts';
import { say } from './wording.ts';

/** What the board makes, counted; and whether its cards are fit for paper. */
export function Counts({ desk }: { readonly desk: BoardDesk }) {
  const { table } = desk.rows;
  const tally = useMemo(() => table && tallyOf(table), [table]);
  const isEmpty = desk.piles.some((pile) => pile.length === 0);
  const number = (count: number | undefined) => (isEmpty ? 0 : (count ?? '…'));
  return (
    <div class="counts">
      <dl>
        <div class="count-real">
          <dd>{number(tally?.real)}</dd>
          <dt>{say.counts.realWords}</dt>
        </div>
        <div>
          <dd>{number(tally?.nonsense)}</dd>
          <dt>{say.counts.nonsense}</dt>
        </div>
      </dl>
      {table && tally && (
        <p class={`fitness ${hiddenCount(tally).toRegret + tally.untaught === 0 ? 'clean' : ''}`}>
          {hiddenInWords(tally)} {fitness(tally)}
        </p>
      )}
    </div>
  );
}

function fitness({ untaught, stopped, rule, unfit }: Tally): string {
  if (untaught > 0) return say.counts.theClassWillNot;
  if (stopped > 0) return say.counts.forTheScreenOnly;
  return rule + unfit > 0 ? say.counts.fitForCards : say.counts.fitForPaperStrictly;
}

/** Harmless combinations that are not shown all the same, each under its reason. */
export function LeftOut({ desk }: { readonly desk: BoardDesk }) {
  const { table } = desk.rows;
  const groups = useMemo(() => (table ? byReason(table, desk) : new Map()), [table]);
  if (!table || groups.size === 0) return null;
  return (
    <details class="left-out">
      <summary>{say.counts.whatBreaksARule}</summary>
      <dl>
        {[...groups].map(([reason, words]) => (
          <div key={reason}>
            <dt>{reason}</dt>
            <dd>{words.join(', ')}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

const general: Readonly<Record<string, string>> = {
  name: say.counts.firstNames,
  'sound-alike': say.counts.theySoundLike,
  'said-differently': say.counts.realWordsButSaid,
};

function byReason(
  table: WordTable,
  { taught, ready, shape }: BoardDesk,
): ReadonlyMap<string, readonly string[]> {
  const context = { taught, lexicon: ready.lexicon, screen: ready.screen };
  const groups = new Map<string, string[]>();
  table.words.forEach((word, row) => {
    const outcome = outcomeAt(table, row);
    if (outcome !== 'rule' && !(outcome in general)) return;
    const built = outcome === 'rule' ? judgeWord(cardsAt(table, row), context, shape) : null;
    const reason = built?.kind === 'stopped' ? built.reason.detail : (general[outcome] ?? '');
    groups.set(reason, [...(groups.get(reason) ?? []), word]);
  });
  return groups;
}
