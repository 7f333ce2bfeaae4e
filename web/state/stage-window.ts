import { linkTo } from './route.ts';

/**
 * Opens the stage in a window of its own, to be put on the projector; one that
 * is open already comes forward. `query` is what the stage is asked to show. False when the browser will not: then a link
 * that she presses herself does it. Must be called from a press or key.
 */
export function openStage(query = ''): boolean {
  const window = open(linkTo('stage', query), 'sweepline-stage', 'popup,width=1280,height=720');
  window?.focus();
  return window !== null;
}
