import { useEffect } from 'preact/hooks';
import type { Drill } from '../../core/drills/drill.ts';
import { catchUp } from '../device/after-paint.ts';
import { classWordsKey } from '../state/class-words.ts';
import { engine, readyEngine } from '../state/engine-ready.ts';
import { drill, ensureDrill, freshSeed } from '../state/plan.ts';
import { askOthers, goOnWith, isOver, resume, running, start, unfinished } from './running.ts';

/** How long another window has to say what is under way, in milliseconds. */
const patience = 60;

/**
 * Takes up today's warm-up: what is under way here or in another window; else
 * what was begun today, where it stood, though she has changed flips of it or
 * blocked a word since; else the plan, from its beginning.
 */
export function useWarmUp() {
  const planned = drill.value;
  const ready = engine.value;
  useEffect(() => ensureDrill(freshSeed()), [ready, planned]);
  useEffect(askOthers, []);
  useEffect(() => (planned ? takeUp(planned) : undefined), [planned]);
  const now = running.value;
  return now && isFit(now.drill) ? now : null;
}

/** Whether every word of a drill is still fit for the class; she may have blocked one since. */
function isFit({ run }: Drill): boolean {
  const ready = readyEngine();
  if (classWordsKey.value === '' || !ready) return true;
  return run.every(({ word, sounds }) => ready.screen.judge(word, sounds).verdict === 'clear');
}

function takeUp(planned: Drill): (() => void) | undefined {
  if (running.peek()?.drill === planned) return undefined;
  askOthers();
  const before = running.peek();
  const timer = setTimeout(() => {
    catchUp();
    if (running.peek() !== before || isSame(before?.drill, planned)) return;
    const begun = unfinished.peek();
    if (begun?.drill.seed !== planned.seed) start(planned);
    else if (isSame(begun.drill, planned)) resume(begun);
    else goOnWith(planned, begun);
  }, patience);
  return () => clearTimeout(timer);
}

/**
 * Makes sure that a warm-up is under way before a screen shows it: goes on with
 * the one that is, or takes up the one begun today, or begins the planned one.
 */
export function goOnOrStart(planned: Drill): void {
  const now = running.peek();
  const begun = unfinished.peek();
  if (now && !isOver(now) && (begun === null || begun.id === now.drillId)) return;
  if (begun) resume(begun);
  else start(planned);
}

/** Whether two plans show the same; a score is not part of what is shown. */
function isSame(one: Drill | undefined, other: Drill): boolean {
  return one !== undefined && shownBy(one) === shownBy(other);
}

function shownBy({ seed, visual, auditory, run }: Drill): string {
  return JSON.stringify([
    seed,
    visual,
    auditory.map(({ phonemes, spellings }) => [phonemes, spellings]),
    run.map(({ cards }) => cards),
  ]);
}
