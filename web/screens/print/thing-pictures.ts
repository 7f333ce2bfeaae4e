import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { dictation } from '../../state/dictation-made.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { kit } from '../../state/paper/kit.ts';
import type { LaidPaper } from '../../state/paper/laid.ts';
import { choices } from '../../state/paper/print-choices.ts';
import { type PrintThing, THINGS } from '../../state/paper/print-things.ts';
import { fetchSentences, sentences } from '../../state/sentences-ready.ts';
import { laidNow, laidOf } from './laid-now.ts';
import { type PaperView, viewOfPage, viewsOfDeck } from './view.ts';

/** The first page or slide of each thing, drawn by the choices of the moment. */
export const thingPictures = signal<ReadonlyMap<PrintThing, PaperView>>(new Map());

/**
 * Draws the pictures one after the other, in moments when nothing else is to be done; that of what is chosen
 * follows the choices.
 */
export function useThingPictures(): void {
  const isReady = readyEngine() !== null && kit.value !== null && kit.value !== 'failed';
  const [all, made, laid] = [sentences.value, dictation.value, laidNow.value];
  useEffect(() => {
    if (isReady) void fetchSentences();
  }, [isReady]);
  useEffect(() => {
    if (laid) keep(choices.peek().kind, laid);
  }, [laid]);
  useEffect(() => {
    if (!isReady) return;
    const wanted = THINGS.filter((thing) => !thingPictures.peek().has(thing));
    let timer = setTimeout(drawNext, PAUSE);
    return () => clearTimeout(timer);

    function drawNext(): void {
      const thing = wanted.shift();
      if (thing === undefined) return;
      const laid = laidOf({ ...choices.peek(), kind: thing, child: '' });
      if (laid) keep(thing, laid);
      timer = setTimeout(drawNext, PAUSE);
    }
  }, [isReady, all, made]);
}

/** Milliseconds between two pictures, so that the page answers in between. */
const PAUSE = 60;

function keep(thing: PrintThing, { pages, deck }: LaidPaper): void {
  const [page] = pages;
  // Of slides the first is a quiet sheet: the second shows a word.
  const slides = viewsOfDeck(deck);
  const view = page ? viewOfPage(page) : (slides[1] ?? slides[0]);
  if (view) thingPictures.value = new Map(thingPictures.peek()).set(thing, view);
}
