import type { CardId } from '../../../core/language/card-id.ts';
import '../../controls/word.css';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { judgeWord } from '../../../core/boards/judge/judge.ts';
import {
  cardsAt,
  mayShow,
  type Outcome,
  outcomeAt,
  type WordTable,
} from '../../../core/boards/judge/word-table.ts';
import type { StopReason } from '../../../core/boards/shapes/board.ts';
import { Card } from '../../controls/card.tsx';
import { meanings } from '../../state/meanings.ts';
import { type BoardDesk, lettersOf } from './desk.ts';
import { say } from './wording.ts';

/** So many tables are drawn at first. */
const FIRST = 12;

/** Why a combination stays hidden, in general words fit for any eyes. */
const HIDDEN: Readonly<Record<Exclude<Outcome, 'familiar' | 'rare' | 'nonsense'>, string>> = {
  rule: say.wordGrid.hiddenBreaksASpelling,
  name: say.wordGrid.hiddenAFirstName,
  'sound-alike': say.wordGrid.hiddenSoundsLike,
  'said-differently': say.wordGrid.hiddenSaidInAnother,
  screened: say.wordGrid.hiddenNotForClass,
  untaught: say.wordGrid.hiddenNotTaughtYet,
};

/** All that the board says: beginnings × endings, a table for each choice of the other cards. */
export function WordGrid({ desk, table }: { readonly desk: BoardDesk; readonly table: WordTable }) {
  const [limit, setLimit] = useState(FIRST);
  const [told, setTold] = useState<number>();
  const layout = useMemo(() => layOut(table.piles), [table]);
  const { middles } = layout;
  const root = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = root.current;
    const tell = (event: Event) => {
      const cell = (event.target as Element).closest<HTMLElement>('[data-row]');
      if (cell) setTold(Number(cell.dataset.row));
    };
    element?.addEventListener('pointerover', tell);
    element?.addEventListener('focusin', tell);
    element?.addEventListener('keydown', moveFocus);
  }, []);
  return (
    <div class="word-grid" ref={root}>
      <p class="told">
        {told !== undefined && told < table.words.length ? (
          tellOf(desk, table, told)
        ) : (
          <span class="quiet">
            <span class="word real">{say.wordGrid.underlined}</span>{' '}
            {say.wordGrid.wordsAreRealPoint}
          </span>
        )}
      </p>
      <div class="word-tables">
        {middles.slice(0, limit).map((middle) => (
          <MiddleTable key={middle.ids.join(' ')} table={table} layout={layout} middle={middle} />
        ))}
      </div>
      {middles.length > limit && (
        <button type="button" class="button" onClick={() => setLimit(middles.length)}>
          {say.wordGrid.showAllTables(middles.length)}
        </button>
      )}
    </div>
  );
}

/** A choice of cards for the piles that are neither rows nor columns of its table. */
interface Middle {
  readonly ids: readonly CardId[];
  /** The place of its first word among all words. */
  readonly from: number;
}

/** How the words of a board are spread over tables: the first pile down, a later one across. */
interface Layout {
  readonly across: number;
  /** How far two words are apart whose cards of a pile are neighbors. */
  readonly strides: readonly number[];
  readonly middles: readonly Middle[];
}

/** Across lies the last pile that has more than one card. */
function layOut(piles: WordTable['piles']): Layout {
  const strides = piles.map((_, at) =>
    piles.slice(at + 1).reduce((size, pile) => size * pile.length, 1),
  );
  const last = piles.findLastIndex((pile, at) => at > 0 && pile.length > 1);
  const across = last > 0 ? last : piles.length - 1;
  let middles: Middle[] = [{ ids: [], from: 0 }];
  piles.forEach((pile, at) => {
    if (at === 0 || at === across) return;
    middles = middles.flatMap(({ ids, from }) =>
      pile.map((id, card) => ({ ids: [...ids, id], from: from + card * (strides[at] as number) })),
    );
  });
  return { across, strides, middles };
}

interface MiddleTableProps {
  readonly table: WordTable;
  readonly layout: Layout;
  readonly middle: Middle;
}

function MiddleTable({ table, layout, middle }: MiddleTableProps) {
  const { across, strides } = layout;
  const firsts = table.piles[0] ?? [];
  const lasts = table.piles[across] ?? [];
  const [down = 1, right = 1] = [strides[0], strides[across]];
  const { ids, from } = middle;
  const name = ids.map(lettersOf).join(' · ');
  return (
    <div class="word-table">
      <table>
        <caption>
          <span class="for-ears">
            {ids.length > 0 ? say.wordGrid.wordsWith(name) : say.wordGrid.allWords}
          </span>
          <span aria-hidden="true" class="middle-cards">
            {ids.map((id, at) => (
              <Card key={`${at} ${id}`} id={id} />
            ))}
          </span>
        </caption>
        <thead>
          <tr>
            <td />
            {lasts.map((id) => (
              <th key={id} scope="col">
                {lettersOf(id)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {firsts.map((first, one) => (
            <tr key={first}>
              <th scope="row">{lettersOf(first)}</th>
              {lasts.map((last, other) => (
                <Cell
                  key={last}
                  table={table}
                  row={from + one * down + other * right}
                  isStop={one === 0 && other === 0}
                />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface CellProps {
  readonly table: WordTable;
  readonly row: number;
  readonly isStop: boolean;
}

function Cell({ table, row, isStop }: CellProps) {
  const outcome = outcomeAt(table, row);
  const stop = { 'data-row': row, tabIndex: isStop ? 0 : -1 };
  if (outcome !== 'familiar' && outcome !== 'rare' && outcome !== 'nonsense') {
    return (
      <td {...stop} class="hidden-word">
        <span aria-hidden="true">·</span>
        <span class="for-ears">{HIDDEN[outcome]}</span>
      </td>
    );
  }
  if (outcome === 'nonsense') return <td {...stop}>{table.words[row]}</td>;
  return (
    <td {...stop}>
      <span class="word real">{table.words[row]}</span>
      <span class="for-ears">{say.wordGrid.real}</span>
    </td>
  );
}

function tellOf({ taught, ready, shape }: BoardDesk, table: WordTable, row: number) {
  const context = { taught, lexicon: ready.lexicon, screen: ready.screen };
  if (!mayShow(table, row)) {
    const built = judgeWord(cardsAt(table, row), context, shape);
    return (
      <>
        <b>{say.wordGrid.hidden}</b>
        {built.kind === 'stopped' && afterHidden(built.reason)}
      </>
    );
  }
  const word = table.words[row] ?? '';
  const isReal = outcomeAt(table, row) !== 'nonsense';
  return (
    <>
      <b>{word}</b>{' '}
      <span class="quiet">
        {isReal
          ? (meanings.value?.meaningOf(word) ?? say.wordGrid.aRealWord)
          : say.wordGrid.nonsense}
      </span>
    </>
  );
}

/** The screen’s reasons are parts of a sentence, all others are whole ones. */
function afterHidden({ code, detail }: StopReason): string {
  return code === 'screened' && !detail.endsWith('.') ? `: ${detail}.` : `. ${detail}`;
}

const WAYS: Readonly<Record<string, readonly [down: number, right: number]>> = {
  ArrowDown: [1, 0],
  ArrowUp: [-1, 0],
  ArrowRight: [0, 1],
  ArrowLeft: [0, -1],
};

/** Arrows go from word to word of a table. */
function moveFocus(event: KeyboardEvent): void {
  const way = WAYS[event.key];
  const cell = (event.target as Element).closest<HTMLTableCellElement>('td[data-row]');
  if (!way || !cell) return;
  event.preventDefault();
  const row = cell.parentElement as HTMLTableRowElement;
  const next = cell.closest('table')?.rows[row.rowIndex + way[0]]?.cells[cell.cellIndex + way[1]];
  if (next?.dataset.row !== undefined) next.focus();
}
