import './print.css';
import { useEffect } from 'preact/hooks';
import { FirstTime } from '../../controls/first-time.tsx';
import { NotArrived } from '../../controls/not-arrived.tsx';
import { dictation, ensureDictation } from '../../state/dictation-made.ts';
import { engine, readyEngine, startEngine } from '../../state/engine-ready.ts';
import { fetchKit, kit } from '../../state/paper/kit.ts';
import { choices, choose, previewed } from '../../state/paper/print-choices.ts';
import { isOfCards, type PrintThing } from '../../state/paper/print-things.ts';
import { ensureDrill, freshSeed } from '../../state/plan.ts';
import { progress } from '../../state/progress.ts';
import { asked, linkTo, takeAsked } from '../../state/route.ts';
import { fetchSentences, sentences } from '../../state/sentences-ready.ts';
import { Choose, WhatToPrint } from './choose.tsx';
import { laidNow, wantsSentences } from './laid-now.ts';
import { PagePreview } from './page-preview.tsx';
import { Save } from './save.tsx';
import { Sets } from './sets.tsx';
import { type PaperView, viewOfPage, viewsOfDeck } from './view.ts';
import { say } from './wording.ts';

/** Cards, strips, sheets and slides: what, how, and every page before it is printed. */
export function PrintPage() {
  useEffect(() => void fetchKit(), []);
  useEffect(takeHome, [asked.value]);
  useNeeds();
  const hasFailed =
    engine.value === 'failed' ||
    kit.value === 'failed' ||
    (wantsSentences(choices.value) && sentences.value === 'failed');
  return (
    <div class="print-screen">
      <h1>{say.print.print}</h1>
      <Sets />
      <WhatToPrint />
      <div class="print-body">
        <Choose steps={progress.value.sequence.steps.length} />
        {hasFailed ? <Failed /> : <Preview />}
      </div>
    </div>
  );
}

/** Turns to the home practice of the child that the address names. */
function takeHome(): void {
  const child = new URLSearchParams(asked.peek()).get('home');
  if (child === null) return;
  choose({ kind: 'home', child });
  takeAsked();
}

/** Makes today's plan and dictation where there is none, and fetches sentences where they are wanted. */
function useNeeds(): void {
  const ready = readyEngine();
  const now = choices.value;
  const [all, made] = [sentences.value, dictation.value];
  useEffect(() => {
    if (ready) ensureDrill(freshSeed());
  }, [ready]);
  useEffect(() => {
    if (wantsSentences(now)) void fetchSentences();
  }, [now]);
  useEffect(() => {
    if (!ready || all === null || all === 'failed') return;
    ensureDictation({ lexicon: ready.lexicon, screen: ready.screen, sentences: all });
  }, [ready, all, made]);
}

function Preview() {
  const laid = laidNow.value;
  const { kind, backs } = choices.value;
  if (!laid) return <p class="quiet">{say.print.layingOutThePages}</p>;
  const views = [...laid.pages.map(viewOfPage), ...viewsOfDeck(laid.deck)];
  return (
    <section class="print-preview" aria-label={say.print.whatWillBePrinted}>
      <Notes notes={laid.notes} />
      {views.length === 0 ? (
        // Enough was taught where a child's own words are wanting; the note says what to do.
        (kind !== 'home' || laid.notes.length === 0) && <Nothing kind={kind} />
      ) : (
        <>
          {laid.pages.length > 0 && <FirstTime of="true size" />}
          <Save laid={laid} />
          <Pages views={views} kind={kind} isBacked={backs && isOfCards(kind)} />
        </>
      )}
    </section>
  );
}

function Nothing({ kind }: { readonly kind: PrintThing }) {
  return (
    <p class="no-cards">
      {isOfCards(kind)
        ? say.print.noCardsAreChosen(<a href={linkTo('learned')}>{say.print.sayWhatWasTaught}</a>)
        : say.print.thereIsNothing(<a href={linkTo('learned')}>{say.print.sayWhatWasTaught}</a>)}
    </p>
  );
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

interface PagesProps {
  readonly views: readonly PaperView[];
  readonly kind: PrintThing;
  /** Every other page is the back of the one before. */
  readonly isBacked: boolean;
}

function Pages({ views, kind, isBacked }: PagesProps) {
  const shown = views.slice(0, previewed.value);
  const rest = views.length - shown.length;
  return (
    <>
      <ol class="papers">
        {shown.map((view, at) => (
          <li key={at}>
            <PagePreview view={view} name={pageName(kind, isBacked, at, views.length)} />
            {isBacked && (
              <span class="quiet" aria-hidden="true">
                {at % 2 === 0
                  ? say.print.front
                  : view.upsideDown
                    ? say.print.backTurnedOver
                    : say.print.back}
              </span>
            )}
          </li>
        ))}
      </ol>
      {rest > 0 && (
        <button type="button" class="button" onClick={() => (previewed.value += 12)}>
          {say.print.showMore(kind === 'slides' ? say.print.slides : say.print.pages, rest)}
        </button>
      )}
    </>
  );
}

/** What a page is called: `at` counts from 0. */
function pageName(kind: PrintThing, isBacked: boolean, at: number, of: number): string {
  if (!isBacked)
    return say.print.of(kind === 'slides' ? say.print.slide : say.print.page, at + 1, of);
  return say.print.sheetOf(
    Math.floor(at / 2) + 1,
    of / 2,
    at % 2 === 0 ? say.print.front : say.print.back,
  );
}

function Failed() {
  return (
    <NotArrived
      onAgain={() => {
        if (engine.peek() === 'failed') void startEngine();
        void fetchKit();
        if (sentences.peek() === 'failed') void fetchSentences();
      }}
    >
      {say.print.whatIsNeeded}
    </NotArrived>
  );
}
