import { useEffect, useMemo, useState } from 'preact/hooks';
import {
  cardGain,
  gainsOnBoard,
  type Tally,
  withOnly,
} from '../../../core/boards/judge/card-gain.ts';
import type { RowJudge } from '../../../core/boards/judge/row-judge.ts';
import type { WordTable } from '../../../core/boards/judge/word-table.ts';
import { splitPiles } from '../../../core/boards/shapes/split-piles.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { rowsAtOnce } from './find-best.ts';
import { inTurns } from './in-turns.ts';

/** What is known of a board while cards move on it. */
export interface Rows {
  /** All rows of the board; null while they are judged, and when a pile is empty. */
  readonly table: WordTable | null;
  /** What each card that lies there adds, by pile and id. */
  readonly lying: readonly ReadonlyMap<CardId, Tally>[];
  /** What each card of the tray would add, as far as known; after a move that of the board before, for a moment. */
  readonly tray: readonly ReadonlyMap<CardId, Tally>[];
}

type Piles = readonly (readonly CardId[])[];

/**
 * Judges the rows of a board and what each card adds. A few new rows, as one
 * moved card brings, are judged at once; many, and those of the tray's cards, in
 * turns after the board is drawn.
 */
export function useRows(judge: RowJudge, piles: Piles, tray: Piles): Rows {
  const most = rowsAtOnce(judge.shape);
  const [judged, setJudged] = useState<Piles>();
  const [known, setKnown] = useState<{ readonly judge: RowJudge; readonly gains: Rows['tray'] }>();
  const isFull = piles.every((pile) => pile.length > 0);
  // `judged` says that rows which were too many are known now.
  const table = useMemo(
    () => (isFull && judge.unjudged(piles) <= most ? judge.table(piles) : null),
    [judge, piles, judged],
  );
  const lying = useMemo(
    () => (table ? gainsOnBoard(table) : piles.map(() => new Map<CardId, Tally>())),
    [table],
  );

  useEffect(() => {
    let isOver = false;
    const board = table || !isFull ? [] : splitPiles(piles, most).map((part) => judgeLater(part));
    const gains = tray.map(() => new Map<CardId, Tally>());
    void (async () => {
      if (!(await inTurns(board, () => isOver))) return;
      if (board.length > 0) setJudged(piles);
      if (await inTurns(trayWork(gains), () => isOver)) setKnown({ judge, gains });
    })();
    return () => {
      isOver = true;
    };
  }, [judge, piles]);

  return { table, lying, tray: known?.judge === judge ? known.gains : [] };

  function judgeLater(part: Piles): () => void {
    return () => void judge.table(part);
  }

  function* trayWork(gains: readonly Map<CardId, Tally>[]): Iterable<() => void> {
    for (const [pile, ids] of tray.entries()) {
      if (piles.some((cards, at) => at !== pile && cards.length === 0)) continue;
      for (const id of ids) {
        yield* splitPiles(withOnly(piles, pile, id), most).map((part) => judgeLater(part));
        yield () => gains[pile]?.set(id, cardGain(judge, piles, pile, id));
      }
    }
  }
}
