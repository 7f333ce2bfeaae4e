/** The ways into a warm-up from a page: which windows open, and what is run in them. */
import type { Drill } from '../../core/drills/drill.ts';
import type { DrillRecord } from '../../core/log/class-state.ts';
import { enterFullScreen } from '../device/full-screen.ts';
import { ledBy } from '../state/led-by.ts';
import { isLookedAt } from '../state/open-class.ts';
import { linkTo } from '../state/route.ts';
import { openStage } from '../state/stage-window.ts';
import { rehearse, resume, start } from './begin.ts';
import { goOnOrStart, holdToThis, LOOKING } from './take-up.ts';

/** From where she leads: the desk with a stage of its own, or the stage alone. */
export type Where = 'desk' | 'stage';

/** Begins a warm-up from its first card. */
export function beginOn(where: Where, drill: Drill): void {
  if (isLookedAt.peek()) lookAt(drill);
  else {
    start(drill);
    open(where);
  }
}

/** Goes on where a warm-up was left; in the windows it was led from, if not said otherwise. */
export function goOn(record: DrillRecord, where: Where = ledBy.peek()): void {
  resume(record);
  open(where);
}

/** Goes on with what is under way, or begins. */
export function goOnOrBegin(where: Where, drill: Drill): void {
  if (isLookedAt.peek()) lookAt(drill);
  else {
    goOnOrStart(drill);
    open(where);
  }
}

/** Runs a warm-up just to look at it. */
export function lookAt(drill: Drill): void {
  rehearse(drill);
  open(ledBy.peek(), LOOKING);
}

/** Must be called from a press or key: a window opens, or the screen is filled. */
function open(where: Where, query = ''): void {
  holdToThis();
  ledBy.value = where;
  if (where === 'desk') openStage(query);
  else enterFullScreen();
  location.hash = linkTo(where, query);
}
