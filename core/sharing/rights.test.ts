import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classId } from '../ids.ts';
import { type ClassRecord, type KeptRecord, signedText } from './record.ts';
import { judge, open, type Refusal, type Rights, rightsAfter, staying } from './rights.ts';
import { makeRightsSaid, type RightsSaid } from './rights-said.ts';
import { ROLES, type Role } from './role.ts';

/** Signatures that anyone could make, and nobody makes by accident: enough to see who was asked for. */
const signature = (key: string, text: string) => `${hash(key + text)}`.padEnd(86, '-');
const checking = {
  verify: (key: string, text: string, signed: string) => signature(key, text) === signed,
  deviceIdOf: (key: string) => `id-of-${key.slice(0, 8)}`,
};
const keyOf = (name: string) => name.padEnd(87, '_');
const idOf = (name: string) => checking.deviceIdOf(keyOf(name));
const deviceOf = (name: string) => ({ sign: keyOf(name), box: keyOf(name), by: name });
const sealed = { run: 'AAAA', private: null };

let lastId = 0;
/** A record that a device of this name signs; `by` another key when it is forged or comes from an invitation. */
function record(name: string, body: string, lane: ClassRecord['lane'], by = name): ClassRecord {
  const unsigned = {
    id: `record-${lastId++}`,
    writer: idOf(name),
    count: 1,
    epoch: lane === 'rights' ? 0 : 1,
    lane,
    body,
  };
  return { ...unsigned, signature: signature(keyOf(by), signedText(classId('class'), unsigned)) };
}
const says = (name: string, said: RightsSaid, by = name) =>
  record(name, makeRightsSaid(said), 'rights', by);
const found = says('owner', { says: 'found', device: deviceOf('owner'), sealed });
const invite = (id: string, role: Role, until = 1000) =>
  says('owner', {
    says: 'invite',
    invite: id,
    sign: keyOf(id),
    box: keyOf(id),
    role,
    until,
    sealed,
  });
const join = (name: string, id: string) =>
  says(name, { says: 'member', invite: id, device: deviceOf(name) }, id);

/** The rights after records that came one a millisecond, and what became of each. */
async function outcomeOf(...records: readonly ClassRecord[]) {
  let rights: Rights | null = null;
  const outcomes: (Refusal | 'ok')[] = [];
  const kept: KeptRecord[] = [];
  for (const one of records) {
    const at = kept.length + 1;
    const outcome = await judge(classId('class'), rights, one, at, checking);
    if ('rights' in outcome) {
      rights = outcome.rights;
      kept.push({ ...one, seq: kept.length + 1, at });
    }
    outcomes.push('rights' in outcome ? 'ok' : outcome.refused);
  }
  return { rights: rights as unknown as Rights, outcomes, kept };
}

describe('who may do what in a class', () => {
  it('begins with the one who shares it', async () => {
    const { rights, outcomes } = await outcomeOf(found, record('owner', 'AAAA', 'run'));
    expect(outcomes).toEqual(['ok', 'ok']);
    expect(staying(rights)).toMatchObject([{ id: idOf('owner'), role: 'owner', by: 'owner' }]);
  });

  it.each([
    ['owner', 'ok', 'ok'],
    ['teacher', 'ok', 'ok'],
    ['aide', 'ok', 'not-allowed'],
    ['specialist', 'not-allowed', 'not-allowed'],
    ['school', 'not-allowed', 'not-allowed'],
  ] as const)('lets one of them write: %s to run by %s, in private %s', async (role, run, own) => {
    const { outcomes } = await outcomeOf(
      found,
      invite('door', role),
      join('other', 'door'),
      record('other', 'AAAA', 'run'),
      record('other', 'AAAA', 'private'),
    );
    expect(outcomes).toEqual(['ok', 'ok', 'ok', run, own]);
  });

  it('lets in by an owner’s word alone who has the keys, in any role, once', async () => {
    const letIn = (name: string, by: string, role: Role, as = name) =>
      says(by, { says: 'let-in', id: idOf(as), device: deviceOf(name), role, sealed });
    const { rights, outcomes } = await outcomeOf(
      found,
      letIn('phone', 'owner', 'teacher'),
      record('phone', 'AAAA', 'private'),
      letIn('other', 'phone', 'owner'),
      letIn('other', 'owner', 'aide', 'phone'),
      letIn('phone', 'owner', 'owner'),
      letIn('tablet', 'owner', 'aide', 'other'),
      says('owner', { says: 'revoke', device: idOf('phone') }),
      letIn('phone', 'owner', 'teacher'),
    );
    expect(outcomes).toEqual([
      ...['ok', 'ok', 'ok', 'not-allowed', 'not-allowed', 'not-allowed', 'wrong-signature', 'ok'],
      'not-allowed',
    ]);
    expect(staying(rights).map(({ by, role }) => [by, role])).toEqual([['owner', 'owner']]);
  });

  it('takes no invitation and lets nobody in with secrets of an epoch that is past', async () => {
    const asked = (epoch: number, id: string) =>
      says('owner', {
        says: 'invite',
        invite: id,
        sign: keyOf(id),
        box: keyOf(id),
        role: 'aide',
        until: 1000,
        epoch,
        sealed,
      });
    const letIn = (epoch: number, name: string) =>
      says('owner', {
        says: 'let-in',
        id: idOf(name),
        device: deviceOf(name),
        role: 'aide',
        epoch,
        sealed,
      });
    const chain = { run: 'AA', private: 'AA' };
    const { outcomes } = await outcomeOf(
      found,
      asked(1, 'first'),
      asked(2, 'early'),
      says('owner', { says: 'epoch', epoch: 2, sealed: {}, chain }),
      asked(1, 'late'),
      letIn(1, 'phone'),
      asked(2, 'second'),
      letIn(2, 'phone'),
    );
    expect(outcomes).toEqual([
      ...['ok', 'ok', 'old-epoch', 'ok'],
      ...['old-epoch', 'old-epoch', 'ok', 'ok'],
    ]);
  });

  it('remembers what was erased, by an owner alone', async () => {
    const erase = (name: string, ...ids: string[]) => says(name, { says: 'purge', ids });
    const { rights, outcomes } = await outcomeOf(
      found,
      invite('i', 'teacher'),
      join('phone', 'i'),
      erase('owner', 'child'),
      erase('phone', 'another'),
      erase('owner', 'note', 'child'),
    );
    expect(outcomes.slice(3)).toEqual(['ok', 'not-allowed', 'ok']);
    expect([...rights.erased]).toEqual(['child', 'note']);
  });

  it('gives no rights but by an owner', async () => {
    for (const role of ROLES) {
      const extra = says('other', {
        says: 'invite',
        invite: 'more',
        sign: keyOf('more'),
        box: keyOf('more'),
        role: 'owner',
        until: 1000,
        sealed,
      });
      const { outcomes } = await outcomeOf(
        found,
        invite('door', role),
        join('other', 'door'),
        extra,
      );
      expect(outcomes.at(-1)).toBe(role === 'owner' ? 'ok' : 'not-allowed');
    }
  });

  it.each<[string, ClassRecord[], Refusal]>([
    ['a stranger', [found, record('thief', 'AAAA', 'run')], 'no-member'],
    ['a record in her name', [found, record('owner', 'AAAA', 'run', 'thief')], 'wrong-signature'],
    [
      'a key that is not the one of its id',
      [
        found,
        invite('door', 'aide'),
        says('a', { says: 'member', invite: 'door', device: deviceOf('b') }, 'door'),
      ],
      'wrong-signature',
    ],
    [
      'an invitation without its keys',
      [
        found,
        invite('door', 'aide'),
        says('a', { says: 'member', invite: 'door', device: deviceOf('a') }),
      ],
      'wrong-signature',
    ],
    [
      'an invitation used twice',
      [found, invite('door', 'aide'), join('a', 'door'), join('b', 'door')],
      'spent',
    ],
    ['an invitation too late', [found, invite('door', 'aide', 3), join('a', 'door')], 'spent'],
    [
      'an invitation taken back',
      [
        found,
        invite('door', 'aide'),
        says('owner', { says: 'revoke', device: 'door' }),
        join('a', 'door'),
      ],
      'spent',
    ],
    [
      'a second beginning',
      [found, says('thief', { says: 'found', device: deviceOf('thief'), sealed })],
      'not-allowed',
    ],
    ['a class that is not shared', [record('owner', 'AAAA', 'run')], 'no-class'],
    [
      'what nobody understands',
      [found, record('owner', '{"says":"sing"}', 'rights')],
      'not-a-record',
    ],
    [
      'an epoch left out',
      [
        found,
        says('owner', { says: 'epoch', epoch: 3, sealed: {}, chain: { run: 'A', private: 'A' } }),
      ],
      'not-allowed',
    ],
    [
      'the last owner removed',
      [found, says('owner', { says: 'revoke', device: idOf('owner') })],
      'not-allowed',
    ],
    [
      'another’s name in `by`',
      [
        found,
        invite('door', 'aide'),
        says(
          'a',
          { says: 'member', invite: 'door', device: { ...deviceOf('a'), by: 'owner' } },
          'door',
        ),
      ],
      'not-allowed',
    ],
    [
      'a class that is deleted',
      [found, says('owner', { says: 'gone' }), record('owner', 'AAAA', 'run')],
      'gone',
    ],
  ])('refuses %s', async (_, records, why) => {
    const { outcomes } = await outcomeOf(...records);
    expect(outcomes.at(-1)).toBe(why);
    expect(new Set(outcomes.slice(0, -1))).toEqual(new Set(records.length > 1 ? ['ok'] : []));
  });

  it('holds off who was removed, and asks the others for the new epoch', async () => {
    const seal = { [idOf('owner')]: { run: 'A', private: 'A' } };
    const { outcomes } = await outcomeOf(
      found,
      invite('door', 'teacher'),
      join('other', 'door'),
      record('other', 'AAAA', 'run'),
      says('owner', { says: 'revoke', device: idOf('other') }),
      says('owner', { says: 'epoch', epoch: 2, sealed: seal, chain: { run: 'A', private: 'A' } }),
      record('other', 'AAAA', 'run'),
      record('owner', 'AAAA', 'run'),
    );
    expect(outcomes.slice(3)).toEqual(['ok', 'ok', 'ok', 'removed', 'old-epoch']);
  });

  it('does not take a record of another class, however well it is signed', async () => {
    const { rights } = await outcomeOf(found);
    const foreign = record('owner', 'AAAA', 'run');
    expect(await judge(classId('other'), rights, foreign, 9, checking)).toEqual({
      refused: 'wrong-signature',
    });
  });

  it('is the same for who reads it later, as long as nothing is damaged', async () => {
    const records = [
      found,
      invite('door', 'teacher'),
      join('a', 'door'),
      invite('second', 'aide'),
      record('a', 'AAAA', 'private'),
      join('b', 'second'),
      says('owner', { says: 'revoke', device: idOf('a') }),
    ];
    const { rights, kept } = await outcomeOf(...records);
    expect(rightsAfter(null, kept)).toEqual(rights);
    expect(rightsAfter(rightsAfter(null, kept.slice(0, 4)), kept.slice(4))).toEqual(rights);
    expect(open(rights, 50)).toEqual([]);
    await fc.assert(
      fc.asyncProperty(
        fc.nat(kept.length - 1),
        fc.constantFrom('body', 'writer', 'count', 'lane'),
        async (place, field) => {
          const damaged = {
            ...(records[place] as ClassRecord),
            [field]: field === 'count' ? 7 : 'run',
          };
          if (damaged[field] === records[place]?.[field]) return;
          const before = rightsAfter(null, kept.slice(0, place));
          const outcome = await judge(classId('class'), before, damaged, 9, checking);
          expect('refused' in outcome).toBe(true);
        },
      ),
    );
  });
});

/** FNV-1a, 32 bits. */
function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let place = 0; place < text.length; place++) {
    value = Math.imul(value ^ text.charCodeAt(place), 0x01000193) >>> 0;
  }
  return value;
}
