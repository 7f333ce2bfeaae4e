import type { DrillId } from '../ids.ts';
import type { Lots } from './calling.ts';
import { type Deed, doDeed } from './deed.ts';
import type { Moment } from './moments.ts';
import type { Running } from './run-state.ts';
import type { Act } from './standing.ts';

/** A warm-up as one window has it. */
export interface Led {
  readonly running: Running;
  /** What was done here and is shown already, oldest first, until the lead has answered. */
  readonly waiting: readonly Waiting[];
}

/** A wish on its way to the lead. */
interface Waiting {
  readonly id: string;
  readonly noted: Noted;
}

/** What the log is to be told of: an act, and how it stood before and after (noted.ts). */
export interface Noted {
  readonly before: Running;
  readonly after: Running;
  readonly what: Act;
  /** Whether it was done elsewhere, or while the lead did not answer: it is noted after it was done. */
  readonly late: boolean;
}

/** What one window tells the others. */
export type Said =
  /** How it stands, said by the lead alone; `granted` is the wish that brought it there, null for none. */
  | { readonly kind: 'state'; readonly running: Running; readonly granted: string | null }
  /** A wish from where it stood, by its count. */
  | {
      readonly kind: 'wish';
      readonly id: string;
      readonly drillId: DrillId;
      readonly from: number;
      readonly deed: Deed;
    };

/** What comes of something: how it stands now, what the others are told, what is noted here. */
export interface LeadStep {
  readonly led: Led;
  readonly say: readonly Said[];
  readonly note: readonly Noted[];
}

/** Nobody leads: the window did that has been closed. */
export const NOBODY = '';

/**
 * Something is done in the window `me`; null when nothing comes of it.
 *
 * Problem: two windows that both note what was shown falsify what broke, since a card that is shown again
 * after a mark was mended. Method: one window leads, the one that began; only what it does is noted. In
 * any other a deed shows at once and goes to the lead as a wish, with the count from which it was done; a
 * wish from an old count is dropped there, so that two presses at one time move one card, and whoever is
 * behind yields. Marks are no wishes: what broke is noted where it was seen. Alternative: the newest state holds,
 * whoever made it; then both have noted.
 */
export function perform(
  { running, waiting }: Led,
  me: string,
  done: { readonly id: string; readonly deed: Deed },
  lots: Lots,
  moments?: readonly Moment[],
): LeadStep | null {
  const became = doDeed(running, done.deed, lots, moments);
  if (became === running) return null;
  const leads = running.by === me || running.by === NOBODY;
  const after: Running = { ...became, count: running.count + 1, by: leads ? me : running.by };
  const noted: Noted = { before: running, after, what: actOf(done.deed), late: !leads };
  if (leads) return { led: { running: after, waiting }, say: [stateOf(after)], note: [noted] };
  const { id, deed } = done;
  return {
    led: { running: after, waiting: [...waiting, { id, noted }] },
    say: [{ kind: 'wish', id, drillId: running.drillId, from: running.count, deed }],
    note: [],
  };
}

/** Another window has said something; `led` is null while nothing is under way here. */
export function hear(led: Led | null, me: string, said: Said, lots: Lots): LeadStep | null {
  if (said.kind === 'wish')
    return led && led.running.by === me ? answer(led, me, said, lots) : null;
  const { running, granted } = said;
  const adopted: LeadStep = { led: { running, waiting: [] }, say: [], note: [] };
  if (led === null) return adopted;
  const own = led.running;
  if (running.by === NOBODY && led.waiting.length > 0) return takeOver(led, me);
  if (own.by === me) {
    if (isNewer(running, own)) return adopted;
    return { led, say: [stateOf(own)], note: [] };
  }
  const [first, ...rest] = led.waiting;
  // The lead stands where this window stood before: the wish has not reached it yet.
  const isUnheard = granted === null && running.count === first?.noted.before.count;
  if (isUnheard && running.by === own.by && running.drillId === own.drillId) return null;
  if (first && first.id === granted) {
    return rest.length === 0
      ? adopted
      : { led: { running: own, waiting: rest }, say: [], note: [] };
  }
  return running.by === own.by || isNewer(running, own) ? adopted : null;
}

/** The lead has not answered: this window leads from now on, and what waited is noted here. */
export function takeOver({ running, waiting }: Led, me: string): LeadStep {
  const taken = { ...running, by: me };
  return {
    led: { running: taken, waiting: [] },
    say: [stateOf(taken)],
    note: waiting.map(({ noted }) => noted),
  };
}

/** The window `me` is closed: when it leads, nobody does until something is done elsewhere. */
export function leave({ running }: Led, me: string): readonly Said[] {
  if (running.by !== me) return [];
  return [stateOf({ ...running, by: NOBODY, count: running.count + 1 })];
}

function answer(led: Led, me: string, said: Said & { kind: 'wish' }, lots: Lots): LeadStep {
  const { running } = led;
  const isOld = said.drillId !== running.drillId || said.from !== running.count;
  const done = isOld ? null : perform(led, me, said, lots);
  if (done === null) {
    const granted = isOld ? null : said.id;
    return { led, say: [{ ...stateOf(running), granted }], note: [] };
  }
  return {
    ...done,
    say: [{ ...stateOf(done.led.running), granted: said.id }],
    note: done.note.map((noted) => ({ ...noted, late: true })),
  };
}

function stateOf(running: Running): Said & { kind: 'state' } {
  return { kind: 'state', running, granted: null };
}

/** Whether one state is of later than another: by its count, and between equals by the lead's name. */
function isNewer(one: Running, other: Running): boolean {
  return one.count === other.count ? one.by > other.by : one.count > other.count;
}

/** As which act a deed is noted; only what is skipped is noted otherwise than the rest. */
function actOf(deed: Deed): Act {
  return deed.does === 'act' ? deed.act : 'next';
}
