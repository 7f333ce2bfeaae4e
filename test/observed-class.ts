import { childId, classId, drillId, eventId } from '../core/ids.ts';
import type { CardId } from '../core/language/card-id.ts';
import { WHOLE_CLASS } from '../core/log/class-state.ts';
import type { EventSpec } from '../core/log/event.ts';
import { makeLog } from '../core/log/log-file.ts';
import { standingAt } from './arbitrary-events.ts';

/** The children of the invented class; the last was never called on. */
const OBSERVED = [
  childId('Bram'),
  childId('Odalys'),
  childId('Tam'),
  childId('Wren'),
  childId('Zadie'),
] as const;

/** Which cards each child stumbles over, and what is heard then. */
const stumbles: Readonly<Record<string, readonly string[]>> = {
  Bram: ['e=EH', 'i=IH'],
  Odalys: ['e=EH', 'i=IH'],
  Tam: ['b=B', 'd=D'],
  Wren: ['b=B', 'd=D'],
};

const cards: readonly CardId[] = ['m=M', 's=S', 'e=EH', 'i=IH', 'b=B', 'd=D'];
const readers = OBSERVED.slice(0, 4);

/**
 * A copy of the log of an invented class, as it is saved to a file: on each of the days, `YYYY-MM-DD`,
 * everyone but the last read every card alone, and stumbled over the cards that are theirs.
 */
export function observedClass(days: readonly string[], names = OBSERVED): string {
  const specs: EventSpec[] = [
    { kind: 'set', body: { of: 'class', id: classId('room'), field: 'name', value: 'Room 4' } },
    {
      kind: 'set',
      body: { of: 'group', id: WHOLE_CLASS, field: 'standing', value: standingAt(30) },
    },
    ...names.map(
      (name): EventSpec => ({
        kind: 'set',
        body: { of: 'child', id: name, field: 'name', value: name },
      }),
    ),
    ...days.flatMap(drillOn),
  ];
  return makeLog(
    specs.map((spec, n) => ({
      id: eventId(`e${String(n).padStart(5, '0')}`),
      classId: classId('room'),
      at: 1000 + n,
      by: 'desk',
      ...spec,
    })),
  );
}

function drillOn(day: string): readonly EventSpec[] {
  const id = drillId(`drill of ${day}`);
  const visual = readers.flatMap(() => cards);
  const drill = {
    seed: 1,
    visual,
    auditory: [],
    board: { shape: 'syllable', piles: [[], [], []] },
    run: [],
    shortfall: null,
  };
  return [
    { kind: 'begun', body: { drillId: id, groupId: WHOLE_CLASS, day, drill } },
    ...readers.flatMap((child, at) =>
      cards.flatMap((card, n): readonly EventSpec[] => {
        const moment = { drillId: id, part: 'visual', place: at * cards.length + n } as const;
        const heard = { kind: 'phoneme', sound: card === 'e=EH' ? 'IH' : 'EH' } as const;
        const read: readonly EventSpec[] = [
          { kind: 'shown', body: moment },
          { kind: 'called', body: { ...moment, child } },
        ];
        if (!stumbles[child]?.includes(card)) return read;
        return [
          ...read,
          { kind: 'marked', body: { ...moment, cards: [card], broke: 1, heard, child } },
        ];
      }),
    ),
    { kind: 'ended', body: { drillId: id, complete: true } },
  ];
}
