import fc from 'fast-check';
import { expect, it } from 'vitest';
import { arbitraryEvents, shuffledWithRepeats } from '../../test/arbitrary-events.ts';
import { classId } from '../ids.ts';
import { eventsIn } from './class-events.ts';
import { mergeEvents } from './merge.ts';
import { replay } from './replay.ts';

it('a class gives back every event that made it, each once, in their order', () => {
  fc.assert(
    fc.property(
      arbitraryEvents().chain((events) =>
        fc.tuple(fc.constant(events), shuffledWithRepeats(events)),
      ),
      ([events, shuffled]) => {
        expect(eventsIn(replay(classId('class'), shuffled))).toEqual(mergeEvents(events, []));
      },
    ),
  );
});
