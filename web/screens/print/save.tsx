import { useEffect } from 'preact/hooks';
import type { ReadFrom } from '../../../print/cards/read-from.ts';
import { type Saving, savingSaid, useSaving } from '../../controls/use-saving.ts';
import { fileOf } from '../../state/paper/file-of.ts';
import { type Kit, kit } from '../../state/paper/kit.ts';
import type { LaidPaper } from '../../state/paper/laid.ts';
import { type Choices, choices } from '../../state/paper/print-choices.ts';
import { isOfCards, isSheet, type PrintThing } from '../../state/paper/print-things.ts';
import { counted } from '../../wording/counted.ts';
import { say } from './wording.ts';

/** The one next step: the file, and how to print it. */
export function Save({ laid }: { readonly laid: LaidPaper }) {
  const now = choices.value;
  const { typeface } = kit.value as Kit;
  const { state, save, forget } = useSaving(() => fileOf(laid, now, typeface));
  useEffect(forget, [laid]);
  return (
    <div class="print-save">
      <button type="button" class="button next" aria-disabled={state === 'making'} onClick={save}>
        {now.kind === 'slides' ? say.save.saveTheSlides : say.save.saveThePdf}
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
  if (deck !== null) return say.save.wordsOnSlides(count, deck.slides.length);
  const sheets = backs && isOfCards(kind) ? pages.length / 2 : pages.length;
  const thing = kind === 'check' && check === 'letter-sounds' ? say.save.letter : things[kind];
  return say.save.onSheets(counted(count, thing ?? say.save.card), sheets);
}

/** How far away a child can read cards for a group. */
function fromWhere({ largest, smallest }: ReadFrom): string {
  const [far, near] = [distance(largest), distance(smallest)];
  const all = say.save.childrenCanReadThem(far);
  return far === near ? `${all}.` : say.save.theSmallestLettersFrom(all, near);
}

/** A distance in m, in whole feet and tenths of a meter that it surely reaches. */
function distance(meters: number): string {
  return say.save.feetM(Math.floor(meters / 0.3048), Math.floor(meters * 10) / 10);
}

/** What is counted, where it is not cards. */
const things: Partial<Record<PrintThing, string>> = {
  strips: say.save.strip,
  plan: say.save.flip,
  words: say.save.word,
  dictation: say.save.item,
  home: say.save.word,
  check: say.save.word,
};

function saidOf(state: Saving, now: Choices): string {
  if (state === 'making' || state === 'failed') return savingSaid[state];
  return `${savingSaid[state]} ${howTo(now)}`.trim();
}

/** How it is printed or shown. */
function howTo({ kind, backs, turn }: Choices): string {
  if (kind === 'slides') {
    return say.save.openTheFile;
  }
  if (isSheet(kind)) return say.save.printAt100(whose[kind]);
  const how = backs ? say.save.onBothSidesTurned(turn) : say.save.at100;
  return say.save.printItTheRuler(how);
}

/** Who gets which page. */
const whose = {
  board: say.save.layTheCards,
  plan: say.save.itIsAll,
  dictation: say.save.theFirstPage,
  words: '',
  home: say.save.oneForEachChild,
  check: say.save.theChildReads,
} as const;
