import type { ChildId, EventId } from '../ids.ts';
import type { DrillEvent } from '../log/event.ts';
import { callAfter, callOn, callPresent, type Lots, turnCalling } from './calling.ts';
import { type Moment, momentsOf } from './moments.ts';
import type { Running } from './run-state.ts';
import { type Act, act, type Blending, type Manner } from './standing.ts';

/** What can be done in a warm-up under way, in any of its windows. */
export type Deed =
  | { readonly does: 'act'; readonly act: Act }
  | { readonly does: 'calling'; readonly on: boolean }
  | { readonly does: 'call'; readonly child: ChildId }
  /** To go by who is there, after somebody came or went. */
  | { readonly does: 'present' }
  | { readonly does: 'blending'; readonly blending: Blending }
  | { readonly does: 'dictated'; readonly words: readonly string[] }
  /** To ask what was heard instead at this mark; null to ask no more. */
  | { readonly does: 'asking'; readonly mark: EventId | null }
  /** What would be noted by now, while she is just looking. */
  | { readonly does: 'aside'; readonly noted: readonly DrillEvent[] };

/**
 * The warm-up after a deed; the same value when nothing comes of it. `moments` are those of its drill.
 * Chance, where a child is drawn, comes in with the lots.
 */
export function doDeed(
  now: Running,
  deed: Deed,
  lots: Lots,
  moments: readonly Moment[] = momentsOf(now.drill),
): Running {
  const { at } = now.standing;
  if (deed.does === 'act') return afterAct(now, deed.act, lots, moments);
  if (deed.does === 'calling') return calling(now, turnCalling(now.calling, deed.on, at, lots));
  if (deed.does === 'call') return calling(now, callOn(now.calling, deed.child, at, lots));
  if (deed.does === 'present') return calling(now, callPresent(now.calling, at, lots));
  if (deed.does === 'blending') {
    return now.blending === deed.blending ? now : { ...now, blending: deed.blending };
  }
  if (deed.does === 'dictated') {
    const isSame = now.dictated.join() === deed.words.join();
    return isSame ? now : { ...now, dictated: deed.words };
  }
  if (deed.does === 'aside') return { ...now, rehearsed: deed.noted };
  return now.asking === deed.mark ? now : { ...now, asking: deed.mark };
}

/** How the warm-up is run. */
export function mannerOf(
  { blending, dictated }: Pick<Running, 'blending' | 'dictated'>,
  moments: readonly Moment[],
): Manner {
  return { moments, blending, dictated: dictated.length };
}

function afterAct(now: Running, what: Act, lots: Lots, moments: readonly Moment[]): Running {
  const standing = act(now.standing, what, mannerOf(now, moments));
  if (standing === now.standing) return now;
  const moved = standing.at !== now.standing.at;
  return {
    ...now,
    standing,
    calling: callAfter(now.calling, now.standing, standing, what, lots),
    asking: moved ? null : now.asking,
  };
}

function calling(now: Running, after: Running['calling']): Running {
  return after === now.calling ? now : { ...now, calling: after };
}
