import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryEvents, shuffledWithRepeats } from '../../test/arbitrary-events.ts';
import { childId, classId, eventId } from '../ids.ts';
import { erasedWith, idsToErase, isErased } from './erased.ts';
import type { LogEvent } from './event.ts';
import { mergeEvents } from './merge.ts';

const event = (id: string, kind: string, body: unknown): LogEvent => ({
  id: eventId(id),
  classId: classId('class'),
  at: 1,
  by: 'desk',
  kind,
  body,
});

const log: readonly LogEvent[] = [
  event('name', 'set', { of: 'child', id: 'r', field: 'name', value: 'Robin' }),
  event('drill', 'begun', { drillId: 'd', groupId: 'all', day: '2026-03-02', drill: {} }),
  event('turn', 'called', { drillId: 'd', part: 'visual', place: 0, child: 'r' }),
  event('mark', 'marked', { drillId: 'd', part: 'visual', place: 0, cards: ['a=AE'], child: 'r' }),
  event('heard', 'amended', { drillId: 'd', mark: 'mark', field: 'heard', value: null }),
  event('back', 'undone', { event: 'heard' }),
  event('class mark', 'marked', { drillId: 'd', part: 'visual', place: 1, cards: [], child: null }),
  event('whose', 'amended', { drillId: 'd', mark: 'class mark', field: 'child', value: 'r' }),
  event('check', 'check-begun', { checkId: 'c', child: 'r', day: '2026-03-02', form: {} }),
  event('item', 'check-marked', { checkId: 'c', item: 0, outcome: 'right', broke: [] }),
  event('paper', 'papers-read', { papersId: 'p', child: 'r', word: 0, answer: { kind: 'absent' } }),
  event('away', 'away', { child: 'r', day: '2026-03-02', away: true }),
  event('line', 'wrote', { page: 'family', about: 'r', text: 'Reads to her brother.' }),
  event('other', 'set', { of: 'child', id: 's', field: 'name', value: 'Sam' }),
  event('newer', 'sung', { child: 'r', song: 'of the short vowels' }),
];

describe('what is erased with a child', () => {
  it('is all that was said of it, and what was said of that; the rest of the class stays', () => {
    const erased = erasedWith(log, ['r']);
    const left = log.filter((one) => !isErased(one, erased)).map(({ id }) => id);
    expect(left).toEqual(['drill', 'class mark', 'other']);
  });

  it('is one line, when only a line is', () => {
    const erased = erasedWith(log, ['line']);
    expect([...erased]).toEqual(['line']);
  });

  it.each([
    ['Robin needs longer on ă.', true],
    ['Sat with ROBIN’s table.', true],
    ['Robinson came along.', false],
    ['Nobody by name.', false],
  ])('takes a line that names the child: %s', (text, goes) => {
    const noted = event('note', 'noted', { drillId: null, groupId: 'all', text });
    expect(idsToErase([...log, noted], childId('r'))).toEqual(goes ? ['r', 'note'] : ['r']);
  });

  it('takes no line for a name that could stand for anything', () => {
    const named = event('n', 'set', { of: 'child', id: 'q', field: 'name', value: 'R.' });
    const noted = event('note', 'noted', { drillId: null, groupId: 'all', text: 'More of r.' });
    expect(idsToErase([named, noted], childId('q'))).toEqual(['q']);
  });

  it('leaves nothing in any log that names it or speaks of what is gone', () => {
    fc.assert(
      fc.property(arbitraryEvents(), (events) => {
        const erased = erasedWith(events, ['child 1']);
        const left = events.filter((one) => !isErased(one, erased));
        expect(JSON.stringify(left)).not.toContain('"child 1"');
        const gone = new Set(events.map(({ id }) => id));
        for (const { id } of left) gone.delete(id);
        for (const { body } of left as readonly LogEvent[]) {
          const { event: of, mark } = body as { readonly event?: never; readonly mark?: never };
          expect([of, mark].filter((one) => one !== undefined && gone.has(one))).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is the same in whatever order and however often events come, and before or after merging', () => {
    fc.assert(
      fc.property(
        arbitraryEvents().chain((events) =>
          fc.tuple(fc.constant(events), shuffledWithRepeats(events), fc.nat(40)),
        ),
        ([events, shuffled, cut]) => {
          const erased = erasedWith(events, ['child 1']);
          expect(erasedWith(shuffled, ['child 1'])).toEqual(erased);
          const left = (some: readonly LogEvent[]) => some.filter((one) => !isErased(one, erased));
          const [here, there] = [shuffled.slice(0, cut), shuffled.slice(cut)];
          expect(mergeEvents(left(here), left(there))).toEqual(left(mergeEvents(here, there)));
        },
      ),
      { numRuns: 60 },
    );
  });
});
