import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type EventId, eventId } from '../ids.ts';
import {
  addTo,
  EMPTY,
  type Outbox,
  sendNext,
  whenKept,
  whenLater,
  whenLost,
  whenRefused,
  whenSeen,
} from './outbox.ts';

type Step =
  | { readonly do: 'add'; readonly ids: readonly EventId[] }
  | { readonly do: 'send' | 'kept' | 'lost' | 'later' | 'old-epoch'; readonly bad?: EventId }
  | { readonly do: 'refused'; readonly bad: EventId };

const id = fc.constantFrom(...'abcdefghij');
const steps: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.oneof(
    fc.record({ do: fc.constant('add' as const), ids: fc.array(id, { maxLength: 4 }) }),
    fc.record({ do: fc.constantFrom('send', 'kept', 'lost', 'later', 'old-epoch') }),
    fc.record({ do: fc.constant('refused' as const), bad: id }),
  ) as fc.Arbitrary<Step>,
  { maxLength: 80 },
);

describe('what is still to be sent', () => {
  it('is lost in no way, and nothing that is wrong blocks the rest', () => {
    fc.assert(
      fc.property(steps, (script) => {
        let outbox: Outbox = EMPTY;
        const given = new Set<string>();
        const kept = new Set<string>();
        script.forEach((step, k) => {
          const flying = outbox.flying;
          if (step.do === 'add') {
            const ids = step.ids.filter((one) => !kept.has(one));
            for (const one of ids) given.add(one);
            outbox = addTo(outbox, ids);
          } else if (step.do === 'send') outbox = sendNext(outbox, 3, k, 0) ?? outbox;
          else if (step.do === 'lost') outbox = whenLost(outbox);
          else if (flying === null) return;
          else if (step.do === 'kept') {
            for (const one of flying.ids) kept.add(one);
            outbox = whenKept(outbox, flying.k);
          } else if (step.do === 'later') outbox = whenLater(outbox, flying.k, 0);
          else if (step.do === 'old-epoch') {
            outbox = whenRefused(outbox, flying.k, flying.ids, 'old-epoch');
          } else outbox = whenRefused(outbox, flying.k, [step.bad ?? eventId('')], 'not-allowed');
        });
        const held = [
          ...outbox.waiting,
          ...(outbox.flying?.ids ?? []),
          ...outbox.aside.keys(),
          ...kept,
        ];
        expect([...held].sort()).toEqual([...given].sort());
        for (let k = 1000; outbox.waiting.length > 0 || outbox.flying; k++) {
          outbox = outbox.flying
            ? whenKept(outbox, outbox.flying.k)
            : (sendNext(outbox, 3, k, 0) as Outbox);
          expect(k).toBeLessThan(1100);
        }
      }),
    );
  });

  it('waits while something flies, and as long as the server asked', () => {
    const sent = sendNext(
      addTo(EMPTY, [eventId('a'), eventId('b'), eventId('c')]),
      2,
      1,
      0,
    ) as Outbox;
    expect(sent).toMatchObject({ waiting: ['c'], flying: { k: 1, ids: ['a', 'b'] } });
    expect(sendNext(sent, 2, 2, 0)).toBeNull();
    const later = whenLater(sent, 1, 50);
    expect(sendNext(later, 2, 2, 49)).toBeNull();
    expect(sendNext(later, 2, 2, 50)?.flying?.ids).toEqual(['a', 'b']);
  });

  it('takes no answer for another', () => {
    const sent = sendNext(addTo(EMPTY, [eventId('a')]), 2, 1, 0) as Outbox;
    expect(whenKept(sent, 7)).toBe(sent);
    expect(whenRefused(sent, 7, [eventId('a')], 'x')).toBe(sent);
  });

  it('leaves out what came back from the server', () => {
    expect(
      whenSeen(addTo(EMPTY, [eventId('a'), eventId('b')]), [eventId('a'), eventId('z')]).waiting,
    ).toEqual(['b']);
  });
});
