import { useEffect } from 'preact/hooks';
import type { Drill } from '../../core/drills/drill.ts';
import { catchUp } from '../device/after-paint.ts';
import { classWordsKey } from '../state/class-words.ts';
import { engine, readyEngine } from '../state/engine-ready.ts';
import { drill, ensureDrill, freshSeed } from '../state/plan.ts';
import { asked } from '../state/route.ts';
import { goOnWith, rehearse, resume, start, stopLooking } from './begin.ts';
import { askOthers, FOLLOWING } from './lead-here.ts';
import { dayNow, isOver, running, unfinished } from './running.ts';
import { ledAfar } from './windows.ts';

/** What the address of a stage or desk asks for when she is just looking. */
export const LOOKING = 'looking';

/** How long another window has to say what is under way, in milliseconds; one on another device longer. */
const patience = { here: 60, afar: 1500 };

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
  const follows = asked.value === FOLLOWING;
  useEffect(() => (planned && !follows ? takeUp(planned) : undefined), [planned, follows]);
  const now = running.value;
  return now && isFit(now.drill) ? now : null;
}

/** Whether every word of a drill is still fit for the class; she may have blocked one since. */
function isFit({ run }: Drill): boolean {
  const ready = readyEngine();
  if (classWordsKey.value === '' || !ready) return true;
  return run.every(({ word, sounds }) => ready.screen.judge(word, sounds).verdict === 'clear');
}

/** The warm-up that she chose to run, whatever is planned; null for none. */
let chosen: string | null = null;

/** Holds to the warm-up under way, though another one may be planned; until `letChosenGo`. */
export function holdToThis(): void {
  chosen = running.peek()?.drillId ?? null;
}

/** She is at the plan again: from there on the plan holds, and what was just looked at is over. */
export function letChosenGo(): void {
  chosen = null;
  stopLooking();
}

function takeUp(planned: Drill): (() => void) | undefined {
  const held = running.peek();
  if (held && (held.drill === planned || held.drillId === chosen)) return undefined;
  askOthers();
  const before = running.peek();
  const timer = setTimeout(
    () => {
      catchUp();
      if (running.peek() !== before || isSame(before?.drill, planned)) return;
      if (asked.peek() === LOOKING) {
        if (!before?.rehearsed) rehearse(planned);
        return;
      }
      const now = dayNow.peek();
      if (now.kind === 'fresh') start(planned);
      else if (now.record.drill.seed !== planned.seed) {
        if (now.kind === 'under-way') resume(now.record);
        else start(planned);
      } else if (now.kind === 'done' || isSame(now.record.drill, planned)) resume(now.record);
      else goOnWith(planned, now.record);
    },
    patience[ledAfar.peek() === null ? 'here' : 'afar'],
  );
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
