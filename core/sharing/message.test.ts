import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classId } from '../ids.ts';
import {
  type DeviceMessage,
  LONGEST_MESSAGE,
  MOST_RECORDS,
  makeMessage,
  parseDeviceMessage,
  parseServerMessage,
  type ServerMessage,
} from './message.ts';
import { type ClassRecord, MOST_SIGNS } from './record.ts';

const id = fc.stringMatching(/^[\w-]{1,30}$/);
const c = id.map(classId);
const key = fc.stringMatching(/^[\w-]{87}$/);
const signature = fc.stringMatching(/^[\w-]{86}$/);
const bytes = fc.stringMatching(/^[\w-]{1,200}$/);
const record: fc.Arbitrary<ClassRecord> = fc.record({
  id,
  writer: id,
  count: fc.nat(),
  epoch: fc.nat(),
  lane: fc.constantFrom('rights', 'run', 'private'),
  body: bytes,
  signature,
});
const kept = fc.tuple(record, fc.nat(), fc.nat()).map(([one, seq, at]) => ({ ...one, seq, at }));
const emptyRun = fc.record({ seq: fc.nat(), to: fc.nat(), trace: fc.nat() });
const t = <const Name extends string>(name: Name) => fc.constant(name);
const said: fc.Arbitrary<DeviceMessage> = fc.oneof(
  fc.record({ t: t('proof'), device: id, key, nonce: bytes, signature }),
  fc.record({ t: t('follow'), c, after: fc.nat(), trace: fc.nat() }),
  fc.record({
    t: t('append'),
    k: fc.nat(),
    c,
    records: fc.array(record, { minLength: 1, maxLength: MOST_RECORDS }),
  }),
  fc.record({ t: t('deposit'), k: fc.nat(), c, invite: id, box: bytes }),
  fc.record({ t: t('fetch'), k: fc.nat(), invite: id }),
  fc.record({ t: t('live'), c, s: id, n: fc.nat(), body: bytes }),
  fc.record({ t: t('here'), c, body: bytes }),
);
const answered: fc.Arbitrary<ServerMessage> = fc.oneof(
  fc.record({ t: t('challenge'), v: fc.nat(), nonce: bytes, now: fc.nat() }),
  fc.record({ t: t('welcome') }),
  fc.record({ t: t('following'), c, head: fc.nat(), knows: fc.boolean() }),
  fc.record({
    t: t('records'),
    c,
    from: fc.nat(),
    to: fc.nat(),
    head: fc.nat(),
    records: fc.array(fc.oneof(kept, emptyRun), { maxLength: 5 }),
  }),
  fc.record({ t: t('kept'), k: fc.nat(), seqs: fc.array(fc.nat()) }),
  fc.record({ t: t('refused'), k: fc.nat(), id: fc.option(id, { nil: null }), why: bytes }),
  fc.record({ t: t('later'), k: fc.nat(), ms: fc.nat() }),
  fc.record({ t: t('deposited'), k: fc.nat() }),
  fc.record({ t: t('fetched'), k: fc.nat(), box: fc.option(bytes, { nil: null }) }),
  fc.record({ t: t('live'), c, s: id, n: fc.nat(), body: bytes, from: id }),
  fc.record({ t: t('here'), c, body: bytes, from: id }),
  fc.record({ t: t('left'), c, from: id }),
  fc.record({ t: t('closed'), c, why: bytes }),
);

describe('messages', () => {
  it('are read as they were made, both ways', () => {
    fc.assert(
      fc.property(said, (one) => {
        expect(parseDeviceMessage(makeMessage(one))).toEqual(one);
      }),
    );
    fc.assert(
      fc.property(answered, (one) => {
        expect(parseServerMessage(makeMessage(one))).toEqual(one);
      }),
    );
  });

  it('are nothing when they are damaged, and nobody stumbles', () => {
    const damaged = fc
      .tuple(said, fc.nat(), fc.nat(), fc.string({ maxLength: 4 }))
      .map(([one, from, count, instead]) => {
        const text = makeMessage(one);
        const at = from % text.length;
        return text.slice(0, at) + instead + text.slice(at + (count % 9));
      });
    fc.assert(
      fc.property(fc.oneof(damaged, fc.string(), fc.json()), (text) => {
        const read = parseDeviceMessage(text);
        if (read !== null) expect(parseDeviceMessage(makeMessage(read))).toEqual(read);
        parseServerMessage(text);
      }),
      { numRuns: 2000 },
    );
  });

  it.each<[string, unknown]>([
    ['no records', { t: 'append', k: 1, c: 'c', records: [] }],
    ['no known kind', { t: 'sing' }],
    ['a name from every object', { t: 'constructor' }],
    ['an id with signs that do not belong there', { t: 'follow', c: 'a b', after: 0 }],
    ['a place before the first', { t: 'follow', c: 'c', after: -1 }],
    ['nothing but a list', []],
  ])('are refused: %s', (_, value) => {
    expect(parseDeviceMessage(JSON.stringify(value))).toBeNull();
  });

  it('are bounded: the body of a record, the records of a message, the message', () => {
    const one = {
      id: 'r',
      writer: 'w',
      count: 1,
      epoch: 1,
      lane: 'run',
      signature: 'A'.repeat(86),
    };
    const append = (body: string, times: number) =>
      parseDeviceMessage(
        JSON.stringify({
          t: 'append',
          k: 1,
          c: 'c',
          records: Array.from({ length: times }, () => ({ ...one, body })),
        }),
      );
    expect(append('A'.repeat(MOST_SIGNS), 1)).not.toBeNull();
    expect(append('A'.repeat(MOST_SIGNS + 1), 1)).toBeNull();
    expect(append('A', MOST_RECORDS)).not.toBeNull();
    expect(append('A', MOST_RECORDS + 1)).toBeNull();
    const longest = JSON.stringify({
      t: 'fetch',
      k: 1,
      invite: 'i',
      more: 'A'.repeat(LONGEST_MESSAGE),
    });
    expect(parseDeviceMessage(longest)).toBeNull();
  });
});
