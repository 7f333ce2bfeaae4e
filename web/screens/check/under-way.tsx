import './under-way.css';
import { useState } from 'preact/hooks';
import { PER_ROW, rowsOf } from '../../../core/checks/check-form.ts';
import type { CheckRecord } from '../../../core/log/class-state.ts';
import type { ItemReading } from '../../../core/log/event.ts';
import { Popover } from '../../controls/popover.tsx';
import { useRoving } from '../../controls/use-roving.ts';
import { openCheck } from '../../state/check-choice.ts';
import { kindNames, outcomeNames, readerOf } from '../../wording/check-names.ts';
import { endCheck, markItem, takeOut, undoMark } from './check-acts.ts';
import { CheckClock, secondsOf, useMinuteOver } from './clock.tsx';
import { MarkedItem } from './marked-item.tsx';
import { isBroken, type Tool, type WholeMark, withBroken, withWhole } from './marking.ts';
import { SaidSheet } from './said-sheet.tsx';
import { Tools } from './tools.tsx';
import { useToolKeys } from './use-tool-keys.ts';
import { say } from './wording.ts';

interface Asked {
  readonly anchor: HTMLElement;
  readonly item: number;
  readonly card: number;
}

/**
 * The teacher's side while the child reads: everything to be read, in the rows
 * in which the child sees it. What is not tapped went well. Also where a check
 * that was read is mended: then there is no clock.
 */
export function UnderWay({
  record,
  onMended,
}: {
  readonly record: CheckRecord;
  readonly onMended?: () => void;
}) {
  const { form, marks, ended } = record;
  const isOver = useMinuteOver(record);
  const [tool, setTool] = useState<Tool>('wrong');
  const [asked, setAsked] = useState<Asked>();
  const now = isOver && tool === 'wrong' && ended === null ? 'last' : tool;
  const mark = (item: number, next: ItemReading, said: string) => {
    markItem(record, item, next, `${form.items[item]?.text ?? ''}: ${said}`);
    setTool('wrong');
  };
  const end = (reached: number) => {
    endCheck(record, reached, ended ? ended.seconds : secondsOf(record, Date.now()));
    onMended?.();
  };
  const perRow = PER_ROW[form.kind];
  const skipRow = (first: number) => {
    const row = form.items.slice(first, first + perRow);
    const isOut = row.every((_, at) => marks.get(first + at)?.outcome === 'left-out');
    const said = say.underWay.row(
      first / perRow + 1,
      isOut ? say.underWay.rightAfterAll : say.underWay.skipped,
    );
    const next = withWhole(isOut ? marks.get(first) : undefined, 'left-out');
    markItem(record, first, next, said, row.length);
    setTool('wrong');
  };
  const act = (what: Tool, item: number, card: number, anchor: HTMLElement) => {
    const before = marks.get(item);
    if (what === 'last') end(item + 1);
    else if (what !== 'wrong') {
      const next = withWhole(before, what);
      mark(item, next, next.outcome === 'right' ? say.underWay.rightAfterAll : outcomeNames[what]);
    } else if (isBroken(before, card)) setAsked({ anchor, item, card });
    else mark(item, withBroken(before, card), say.underWay.marked);
  };
  const roving = useRoving<HTMLFieldSetElement>({ wraps: true });
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const item = (event.target as HTMLElement).dataset.item;
    if (item !== undefined && event.key.toUpperCase() === 'R') {
      event.preventDefault();
      skipRow(Number(item) - (Number(item) % perRow));
    } else roving.onKeyDown(event);
  };
  const choose = (next: Tool) => setTool(next === now ? 'wrong' : next);
  useToolKeys(choose, () => undoMark(record.id));
  return (
    <div class="check-now">
      <div class="check-bar">
        <div class="check-title">
          <h1>
            {readerOf(record)} <span class="quiet">{kindNames[form.kind]}</span>
          </h1>
          {ended === null && <CheckClock record={record} />}
        </div>
        <Tools
          now={now}
          onTool={choose}
          onUndo={record.markedLast === null ? null : () => undoMark(record.id)}
        />
        <p class="check-hint" role="status">
          {hintFor(now, isOver)}
        </p>
      </div>
      <fieldset
        class={`check-rows of-${form.kind}`}
        aria-label={say.underWay.whatTheChildReads}
        {...roving}
        onKeyDown={onKeyDown}
      >
        {rowsOf(form).map((row, number) => (
          <div key={row[0]?.at} class="check-row" data-rove-row>
            <button
              type="button"
              class="check-row-number"
              aria-label={say.underWay.rowWasSkipped(number + 1)}
              title={say.underWay.theWholeRow}
              tabIndex={-1}
              onClick={() => skipRow(row[0]?.at ?? 0)}
            >
              {number + 1}
            </button>
            {row.map(({ item, at }) => (
              <MarkedItem
                key={at}
                item={item}
                at={at}
                reading={marks.get(at)}
                isBeyond={ended !== null && at >= ended.reached}
                onTap={(card, anchor) => act(now, at, card, anchor)}
              />
            ))}
          </div>
        ))}
      </fieldset>
      <p class="check-foot">
        {ended === null ? (
          <>
            <button type="button" class="button next" onClick={() => end(form.items.length)}>
              {say.underWay.allOf}
            </button>
            <button type="button" class="button" onClick={() => openCheck(null)}>
              {say.underWay.leaveItForNow}
            </button>
            <button
              type="button"
              class="button plain"
              onClick={() => takeOut(record, readerOf(record))}
            >
              {say.underWay.takeThisCheckOut}
            </button>
          </>
        ) : (
          <button type="button" class="button next" onClick={onMended}>
            {say.underWay.backToTheScore}
          </button>
        )}
      </p>
      {asked && (
        <Popover
          key={`${asked.item} ${asked.card}`}
          anchor={asked.anchor}
          title={say.underWay.whatWasSaidInstead}
          onClose={() => setAsked(undefined)}
        >
          <SaidSheet
            form={form}
            item={asked.item}
            card={asked.card}
            reading={marks.get(asked.item)}
            onSay={(next, said) => {
              asked.anchor.focus();
              setAsked(undefined);
              mark(asked.item, next, said);
            }}
            onWhole={(what: WholeMark) => {
              asked.anchor.focus();
              setAsked(undefined);
              act(what, asked.item, asked.card, asked.anchor);
            }}
          />
        </Popover>
      )}
    </div>
  );
}

function hintFor(tool: Tool, isOver: boolean): string {
  if (isOver && tool === 'last') {
    return say.underWay.thatWasAMinute;
  }
  return hints[tool];
}

const hints: Readonly<Record<Tool, string>> = {
  wrong: say.underWay.tapACard,
  'self-corrected': say.underWay.tapWhatTheChild,
  hesitated: say.underWay.tapWhatYouSaid,
  'left-out': say.underWay.tapWhatTheChildLeft,
  last: say.underWay.tapTheLastOne,
};
