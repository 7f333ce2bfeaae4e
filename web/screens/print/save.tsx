import { useEffect } from 'preact/hooks';
import type { ReadFrom } from '../../../print/cards/read-from.ts';
import { type Saving, savingSaid, useSaving } from '../../controls/use-saving.ts';
import { fileOf } from '../../state/paper/file-of.ts';
import { type Kit, kit } from '../../state/paper/kit.ts';
import type { LaidPaper } from '../../state/paper/laid.ts';
import { type Choices, choices } from '../../state/paper/print-choices.ts';
import { isOfCards, isSheet, type PrintThing } from '../../state/paper/print-things.ts';
import { counted } from '../../wording/counted.ts';

/** The one next step: the file, and how to print it. */
export function Save({ laid }: { readonly laid: LaidPaper }) {
  const now = choices.value;
  const { typeface } = kit.value as Kit;
  const { state, save, forget } = useSaving(() => fileOf(laid, now, typeface));
  useEffect(forget, [laid]);
  return (
    <div class="print-save">
      <button type="button" class="button next" aria-disabled={state === 'making'} onClick={save}>
        {now.kind === 'slides' ? 'Save the slides' : 'Save the PDF'}
      </button>
      <p>
        <b>{amountOf(laid, now)}</b> {laid.readFrom && fromWhere(laid.readFrom)}{' '}
        <span class="quiet" aria-live="polite">
          {saidOf(state, now)}
        </span>
      </p>
    </div>
  );
}

function amountOf({ pages, deck, count }: LaidPaper, { kind, backs, check }: Choices): string {
  if (deck !== null) return `${counted(count, 'word')} on ${counted(deck.slides.length, 'slide')}.`;
  const sheets = backs && isOfCards(kind) ? pages.length / 2 : pages.length;
  const thing = kind === 'check' && check === 'letter-sounds' ? 'letter' : things[kind];
  return `${counted(count, thing ?? 'card')} on ${counted(sheets, 'sheet')}.`;
}

/** How far away a child can read cards for a group. */
function fromWhere({ largest, smallest }: ReadFrom): string {
  const [far, near] = [distance(largest), distance(smallest)];
  const all = `Children can read them from ${far} away`;
  return far === near ? `${all}.` : `${all}, the smallest letters from ${near}.`;
}

/** A distance in m, in whole feet and tenths of a meter that it surely reaches. */
function distance(meters: number): string {
  return `${Math.floor(meters / 0.3048)} feet (${Math.floor(meters * 10) / 10} m)`;
}

/** What is counted, where it is not cards. */
const things: Partial<Record<PrintThing, string>> = {
  strips: 'strip',
  plan: 'flip',
  words: 'word',
  dictation: 'item',
  home: 'word',
  check: 'word',
};

function saidOf(state: Saving, now: Choices): string {
  if (state === 'making' || state === 'failed') return savingSaid[state];
  return `${savingSaid[state]} ${howTo(now)}`.trim();
}

/** How it is printed or shown. */
function howTo({ kind, backs, turn }: Choices): string {
  if (kind === 'slides') {
    return 'Open the file in your presentation program: each click moves the line. The notes below are for you.';
  }
  if (isSheet(kind)) return `Print at 100%. ${whose[kind]}`;
  const how = backs ? `on both sides, turned along the ${turn} edge, at 100%` : 'at 100%';
  return `Print it ${how}; the ruler on the first page shows whether the size is true.`;
}

/** Who gets which page. */
const whose = {
  board: 'Lay the cards by it.',
  plan: 'It is all that a substitute needs.',
  dictation: 'The first page is yours; the last is for each child.',
  words: '',
  home: 'One for each child.',
  check: 'The child reads from the first pages; you score on those after them.',
} as const;
