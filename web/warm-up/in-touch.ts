/**
 * What the windows tell each other of the warm-up, on the channel: its plan once, then after each act only
 * where it stands. A window that has just come, or missed a plan, asks.
 */
import type { ChildId, DrillId } from '../../core/ids.ts';
import { NOBODY, type Said } from '../../core/warm-up/lead.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import { type Plan, placeOf, planFor, runningAt } from '../../core/warm-up/sent.ts';
import { isWindowSaid, type WindowSaid } from '../../core/warm-up/window-said.ts';
import { openLink } from '../device/link.ts';

/** What a window needs to be in touch. */
export interface InTouchSpec {
  readonly name: string;
  /** This window. */
  readonly me: string;
  readonly newKey: () => string;
  /** What is under way here. */
  readonly known: () => Running | null;
  /** The children called in other drills than this one, oldest first. */
  readonly calledBefore: (drillId: DrillId) => readonly ChildId[];
  /** Is told what another window said, and on which device that is; null for this one. */
  readonly onSaid: (said: Said, afar: string | null) => void;
}

/** Being in touch: `say` tells the others, `ask` asks them what is under way. */
export interface InTouch {
  say(said: Said): void;
  ask(): void;
}

/** A plan, and the children called in other drills before. */
interface HeardPlan {
  readonly plan: Plan;
  readonly calls: readonly ChildId[];
}

/** So many plans are held, for as many warm-ups at once as there may be on several devices. */
const MOST_PLANS = 8;

/** Begins to listen to the other windows. */
export function getInTouch({
  name,
  me,
  newKey,
  known,
  calledBefore,
  onSaid,
}: InTouchSpec): InTouch {
  let plan: Plan | null = null;
  let heard: ReadonlyMap<string, HeardPlan> = new Map();
  const link = openLink<WindowSaid>(name, isWindowSaid, (message) => {
    const { afar = null } = message;
    if (message.kind === 'wish') onSaid(message, afar);
    else if (message.kind === 'ask') tellAll();
    else if (message.kind === 'plan') {
      const { key, drillId } = message.plan;
      if (afar === null || known()?.drillId === drillId) ({ plan } = message);
      const newest = [...heard].slice(1 - MOST_PLANS);
      const calls = calledBefore(drillId);
      heard = new Map([...newest, [key, { plan: message.plan, calls }]]);
    } else {
      const told = heard.get(message.place.plan) ?? ownPlan(message.place.plan);
      if (told === null) return link.send({ kind: 'ask' });
      const running = runningAt(told.plan, message.place, told.calls);
      onSaid({ kind: 'state', running, granted: message.granted }, afar);
    }
  });
  return {
    say(said) {
      if (said.kind === 'wish') link.send(said);
      else tell(said.running, said.granted, false);
    },
    ask: () => link.send({ kind: 'ask' }),
  };

  /** A plan that this window made itself, by its key. */
  function ownPlan(key: string): HeardPlan | null {
    return plan?.key === key ? { plan, calls: calledBefore(plan.drillId) } : null;
  }

  function tell(running: Running, granted: string | null, whole: boolean): void {
    const before = plan;
    plan = planFor(running, before, newKey());
    if (whole || plan !== before) link.send({ kind: 'plan', plan });
    link.send({ kind: 'place', place: placeOf(running, plan), granted });
  }

  /** The lead answers; where nobody leads, whoever is there. */
  function tellAll(): void {
    const running = known();
    if (running && (running.by === me || running.by === NOBODY)) tell(running, null, true);
  }
}
