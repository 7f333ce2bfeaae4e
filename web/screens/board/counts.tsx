import { useMemo } from 'preact/hooks';
import { type Tally, tallyOf } from '../../../core/boards/judge/card-gain.ts';
import { judgeWord } from '../../../core/boards/judge/judge.ts';
import { cardsAt, outcomeAt, type WordTable } from '../../../core/boards/judge/word-table.ts';
import type { Desk } from './desk.ts';

/** What the board makes, counted; and whether its cards are fit for paper. */
export function Counts({ desk }: { readonly desk: Desk }) {
  const { table } = desk.rows;
  const tally = useMemo(() => table && tallyOf(table), [table]);
  const isEmpty = desk.piles.some((pile) => pile.length === 0);
  const number = (count: number | undefined) => (isEmpty ? 0 : (count ?? '…'));
  const skipped = (tally?.stopped ?? 0) + (tally?.untaught ?? 0);
  const broken = (tally?.rule ?? 0) + (tally?.unfit ?? 0);
  return (
    <div class="counts">
      <dl>
        <div class="count-real">
          <dt>real words</dt>
          <dd>{number(tally?.real)}</dd>
        </div>
        <div>
          <dt>nonsense</dt>
          <dd>{number(tally?.nonsense)}</dd>
        </div>
        <div class={skipped > 0 ? 'count-stop' : ''}>
          <dt>stopped</dt>
          <dd>{number(tally ? skipped : undefined)}</dd>
        </div>
        <div>
          <dt>left out</dt>
          <dd>{number(tally ? broken : undefined)}</dd>
        </div>
      </dl>
      {table && tally && (
        <p class={`fitness ${skipped === 0 ? 'clean' : ''}`}>
          {fitness(tally.untaught, skipped, broken)}
        </p>
      )}
    </div>
  );
}

function fitness(untaught: number, skipped: number, broken: number): string {
  if (untaught > 0) return 'Some cards were not taught yet; the class will not see them.';
  if (skipped > 0) return 'For the screen only: it skips what is stopped.';
  if (broken > 0) return 'Clean: fit for cards on paper.';
  return 'Clean, and no rule broken: fit for paper.';
}

/** Harmless combinations that are not shown all the same, each under its reason. */
export function LeftOut({ desk }: { readonly desk: Desk }) {
  const { table } = desk.rows;
  const groups = useMemo(() => (table ? byReason(table, desk) : new Map()), [table]);
  if (!table || groups.size === 0) return null;
  return (
    <details class="left-out">
      <summary>{leftOutInWords(tallyOf(table))}</summary>
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

function leftOutInWords({ rule, unfit }: Tally): string {
  const parts: string[] = [];
  if (rule > 0)
    parts.push(rule === 1 ? '1 breaks a spelling rule' : `${rule} break a spelling rule`);
  if (unfit > 0) parts.push(`${unfit} would mislead`);
  return `Left out: ${parts.join(', ')}`;
}

const general: Readonly<Record<string, string>> = {
  name: 'First names.',
  'sound-alike': 'They sound like a real word that is spelled otherwise.',
  'said-differently': 'Real words, but said in another way.',
};

function byReason(
  table: WordTable,
  { taught, ready, shape }: Desk,
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
