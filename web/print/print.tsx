import './print.css';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { engine, readyEngine, startEngine } from '../app/engine-ready.ts';
import { linkTo } from '../app/route.ts';
import { saveFile } from '../app/save-text.ts';
import { boardOnTable } from '../memory/boards.ts';
import { classState, group } from '../memory/open-class.ts';
import { drill, ensureDrill, freshSeed } from '../memory/plan.ts';
import { progress, taught } from '../memory/progress.ts';
import { type Choices, choices, previewed } from './choices.ts';
import { Choose } from './choose.tsx';
import { type Chosen, chosenPages } from './chosen.ts';
import { type CardLook, inks } from './engine.ts';
import { fetchKit, type Kit, kit } from './kit.ts';
import { PagePreview } from './page-preview.tsx';
import { newThisWeek } from './this-week.ts';

/** Cards and strips for paper: what, how, and every page before it is printed. */
export function PrintPage() {
  useEffect(() => void fetchKit(), []);
  const ready = readyEngine();
  useEffect(() => {
    if (ready) ensureDrill(freshSeed());
  }, [ready]);
  const hasFailed = engine.value === 'failed' || kit.value === 'failed';
  return (
    <div class="print-screen">
      <h1>Cards on paper</h1>
      <div class="print-body">
        <Choose steps={progress.value.sequence.steps.length} />
        {hasFailed ? <Failed /> : <Preview />}
      </div>
    </div>
  );
}

function Preview() {
  const ready = readyEngine();
  const now = choices.value;
  const tools = kit.value;
  const [today, table] = [drill.value?.board ?? null, boardOnTable.value];
  const [place, known] = [progress.value, taught.value];
  const chosen = useMemo(() => {
    if (!ready || !tools || tools === 'failed') return null;
    const { typeface } = tools;
    const newest = () => newThisWeek(classState.peek(), group.peek().id, place, Date.now());
    const stock = { progress: place, taught: known, newest, today, table, ready, typeface };
    return chosenPages(now, stock, lookOf(now, tools));
  }, [ready, tools, now, today, table, place, known]);
  if (!chosen || !tools || tools === 'failed') return <p class="quiet">Laying out the cards …</p>;
  return (
    <section class="print-preview" aria-label="What will be printed">
      <Notes notes={chosen.notes} />
      {chosen.pages.length === 0 ? (
        <p class="no-cards">
          No cards are chosen yet. <a href={linkTo('learned')}>Say what was taught</a>, or write
          your own.
        </p>
      ) : (
        <>
          <Save now={now} chosen={chosen} tools={tools} />
          <Pages chosen={chosen} isBacked={now.backs} />
        </>
      )}
    </section>
  );
}

function lookOf({ grey, pictures }: Choices, tools: Kit): CardLook {
  return {
    inks: inks(grey),
    typeface: tools.typeface,
    grey,
    pictures: pictures ? tools.pictures : null,
  };
}

function Notes({ notes }: { readonly notes: readonly string[] }) {
  if (notes.length === 0) return null;
  return (
    <ul class="print-notes" role="status">
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}

interface SaveProps {
  readonly now: Choices;
  readonly chosen: Chosen;
  readonly tools: Kit;
}

/** The one next step: the file for the printer, and how to print it. */
function Save({ now, chosen, tools }: SaveProps) {
  const [state, setState] = useState<'' | 'making' | 'saved' | 'failed'>('');
  useEffect(() => setState(''), [chosen]);
  const sheets = now.backs ? chosen.pages.length / 2 : chosen.pages.length;
  const save = async () => {
    setState('making');
    try {
      const { makePdf } = await import('../../print/document.ts');
      const spec = {
        title: 'Cards',
        pages: chosen.pages,
        ...(now.backs ? { turn: now.turn } : {}),
      };
      const bytes = await makePdf(spec, tools.typeface);
      saveFile(`cards-${now.kind}-${now.paper}.pdf`, bytes as BlobPart, 'application/pdf');
      setState('saved');
    } catch {
      setState('failed');
    }
  };
  return (
    <div class="print-save">
      <button
        type="button"
        class="button next"
        aria-disabled={state === 'making'}
        onClick={() => state !== 'making' && void save()}
      >
        Save the PDF
      </button>
      <p>
        <b>
          {counted(chosen.count, now.kind === 'strips' ? 'strip' : 'card')} on{' '}
          {counted(sheets, 'sheet')}.
        </b>{' '}
        <span class="quiet" aria-live="polite">
          {saidOf(state, now)}
        </span>
      </p>
    </div>
  );
}

function saidOf(state: '' | 'making' | 'saved' | 'failed', { backs, turn }: Choices): string {
  if (state === 'making') return 'Making the file …';
  if (state === 'failed') return 'The file could not be made. Nothing is lost: try once more.';
  const how = backs ? `on both sides, turned along the ${turn} edge, at 100 %` : 'at 100 %';
  const begun = state === 'saved' ? 'Saved among your downloads. ' : '';
  return `${begun}Print it ${how}; the ruler on the first page shows whether the size is true.`;
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}

function Pages({
  chosen: { pages },
  isBacked,
}: {
  readonly chosen: Chosen;
  readonly isBacked: boolean;
}) {
  const shown = pages.slice(0, previewed.value);
  const rest = pages.length - shown.length;
  return (
    <>
      <ol class="papers">
        {shown.map((page, at) => (
          <li key={at}>
            <PagePreview page={page} name={pageName(at, pages.length, isBacked)} />
            {isBacked && (
              <span class="quiet" aria-hidden="true">
                {at % 2 === 0 ? 'front' : page.upsideDown ? 'back, turned over the top' : 'back'}
              </span>
            )}
          </li>
        ))}
      </ol>
      {rest > 0 && (
        <button type="button" class="button" onClick={() => (previewed.value += 12)}>
          Show more pages ({rest})
        </button>
      )}
    </>
  );
}

function pageName(at: number, of: number, isBacked: boolean): string {
  if (!isBacked) return `Page ${at + 1} of ${of}`;
  return `Sheet ${Math.floor(at / 2) + 1} of ${of / 2}, ${at % 2 === 0 ? 'front' : 'back'}`;
}

function Failed() {
  return (
    <div class="shortfall" role="alert">
      <p>
        What is needed for printing did not arrive. Once it has been loaded, it works without a
        network.
      </p>
      <button
        type="button"
        class="button"
        onClick={() => {
          if (engine.peek() === 'failed') void startEngine();
          void fetchKit();
        }}
      >
        Try again
      </button>
    </div>
  );
}
