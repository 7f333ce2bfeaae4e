import type { DrillRecord, Happening, Mark } from './class-state.ts';
import type { Amendment, DrillEvent, EventKind, LogEvent, Moment } from './event.ts';

/**
 * Reads what came of a drill from its events in force, in their order. Null
 * while it is not known how it was begun: marks may come from another device
 * before the drill itself does. Begun twice, it is the drill that was first.
 */
export function readDrill(events: readonly DrillEvent[]): DrillRecord | null {
  const begun = ofKind(events, 'begun')[0];
  if (begun === undefined) return null;
  const ended = ofKind(events, 'ended').at(-1);
  const amendments = ofKind(events, 'amended').map(({ body }) => body);
  return {
    id: begun.body.drillId,
    groupId: begun.body.groupId,
    day: begun.body.day,
    drill: begun.body.drill,
    at: begun.at,
    shown: ofKind(events, 'shown').map(happeningOf),
    calls: ofKind(events, 'called').map((event) => ({
      ...happeningOf(event),
      child: event.body.child,
    })),
    marks: ofKind(events, 'marked').map((event) => {
      const { cards, broke, heard, child } = event.body;
      return amended({ ...happeningOf(event), cards, broke, heard, child }, amendments);
    }),
    corrections: ofKind(events, 'corrected').map(happeningOf),
    ended: ended ? { at: ended.at, complete: ended.body.complete } : null,
  };
}

function ofKind<Kind extends EventKind>(
  events: readonly DrillEvent[],
  kind: Kind,
): readonly Extract<DrillEvent, { readonly kind: Kind }>[] {
  return events.filter(
    (event): event is Extract<DrillEvent, { readonly kind: Kind }> => event.kind === kind,
  );
}

function happeningOf({ id, at, body }: LogEvent & { readonly body: Moment }): Happening {
  return { id, at, part: body.part, place: body.place };
}

function amended(mark: Mark, amendments: readonly Amendment[]): Mark {
  let now = mark;
  for (const { mark: id, field, value } of amendments) {
    if (id !== mark.id || (field === 'broke' && (value ?? 0) > mark.cards.length)) continue;
    now = { ...now, [field]: value };
  }
  return now;
}
