import { describe, expect, it } from 'vitest';
import { childId, classId, eventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { ClassRecord, KeptRecord } from '../../../core/sharing/record.ts';
import type { Lane, Role } from '../../../core/sharing/role.ts';
import { makeKeys } from './cipher.ts';
import { openInvitation } from './invitation.ts';
import { ownDevice } from './own-device.ts';
import { createSharedClass, type SharedClass, type Taken } from './shared-class.ts';

let lastId = 0;
const newId = () => `id-${lastId++}`;
const LATER = 1_000_000;

/** A class kept by nobody but this test: every device takes every record. */
class Room {
  readonly kept: KeptRecord[] = [];
  readonly devices: { readonly shared: SharedClass; readonly taken: Taken[] }[] = [];

  async begin() {
    const own = await ownDevice(await makeKeys(false), 'desk');
    const shared = createSharedClass({
      classId: classId('class'),
      own,
      founder: own.id,
      invitation: null,
      newId,
    });
    const desk = await this.#add(shared);
    await this.keep(await shared.found());
    return { ...desk, id: own.id, own };
  }

  /** Another device comes in by an invitation of the first. */
  async join(name: string, role: Role) {
    const { record, box, secret } = await this.first.shared.invite(role, LATER);
    await this.keep(record);
    const opened = await openInvitation(secret, box);
    if (!opened) throw new Error('The invitation does not open.');
    const own = await ownDevice(await makeKeys(false), name);
    const { founder } = opened;
    const shared = createSharedClass({
      classId: classId('class'),
      own,
      founder,
      invitation: opened,
      newId,
    });
    await this.keep(await shared.comeIn(opened));
    return { ...(await this.#add(shared)), id: own.id };
  }

  get first() {
    const [first] = this.devices;
    if (!first) throw new Error('Nobody has begun.');
    return first;
  }

  async keep(...records: readonly ClassRecord[]): Promise<void> {
    for (const record of records) {
      const kept: KeptRecord = { ...record, seq: this.kept.length + 1, at: this.kept.length + 1 };
      this.kept.push(kept);
      for (const { shared, taken } of this.devices)
        taken.push(...(await shared.take(kept, () => undefined)));
    }
  }

  /** Says something on a lane. */
  async say({ shared }: { readonly shared: SharedClass }, lane: Lane, ...texts: readonly string[]) {
    const record = await shared.sealed(
      lane,
      newId(),
      1,
      texts.map((text) => event(lane, text)),
    );
    if (record) await this.keep(record);
    return record;
  }

  async #add(shared: SharedClass) {
    const device = { shared, taken: [] as Taken[] };
    for (const record of this.kept)
      device.taken.push(...(await shared.take(record, () => undefined)));
    this.devices.push(device);
    return device;
  }
}

function event(lane: Lane, text: string): LogEvent {
  const stamp = { id: eventId(newId()), classId: classId('class'), at: 1, by: 'desk' };
  if (lane === 'private') {
    return { ...stamp, kind: 'noted', body: { drillId: null, groupId: 'g', text } };
  }
  return {
    ...stamp,
    kind: 'set',
    body: { of: 'child', id: childId('c'), field: 'name', value: text },
  };
}

/** What a device has read, as texts. */
function heard({ taken }: { readonly taken: readonly Taken[] }): readonly string[] {
  return taken.flatMap((one) =>
    one.kind === 'events'
      ? one.admitted.events.map(({ body }) => {
          const { text, value } = body as { text?: string; value?: string };
          return text ?? value ?? '';
        })
      : [],
  );
}
const asides = ({ taken }: { readonly taken: readonly Taken[] }) =>
  taken.flatMap((one) => (one.kind === 'aside' ? [one.why] : []));

describe('a class on several devices', () => {
  it('is read by all that came in, each as far as its role reads, what was before included', async () => {
    const room = new Room();
    const desk = await room.begin();
    await room.say(desk, 'run', 'Robin');
    await room.say(desk, 'private', 'ă again');
    const teacher = await room.join('phone', 'teacher');
    const aide = await room.join('tablet', 'aide');
    const specialist = await room.join('laptop', 'specialist');
    await room.say(teacher, 'private', 'from the phone');
    expect(heard(desk)).toEqual(['Robin', 'ă again', 'from the phone']);
    expect(heard(teacher)).toEqual(['Robin', 'ă again', 'from the phone']);
    expect(heard(specialist)).toEqual(['Robin', 'ă again', 'from the phone']);
    expect(heard(aide)).toEqual(['Robin']);
    expect(await aide.shared.sealed('private', newId(), 1, [])).toBeNull();
    for (const one of room.devices) expect(asides(one)).toEqual([]);
  });

  it('shows nothing to whoever keeps it', async () => {
    const room = new Room();
    const desk = await room.begin();
    await room.join('phone', 'teacher');
    await room.say(desk, 'run', 'Robin');
    await room.say(desk, 'private', 'Robin again');
    expect(JSON.stringify(room.kept)).not.toMatch(/robin/i);
    // Before what is sealed stand 12 bytes of nonce, and after it 16 that tie it (AES-GCM).
    for (const text of ['a', 'ab', 'a longer line of hers, about several children']) {
      const record = await room.say(desk, 'run', text);
      const sealed = Buffer.from(record?.body ?? '', 'base64url').length - 12 - 16;
      expect([sealed > 0, sealed % 64]).toEqual([true, 0]);
    }
  });

  it('is closed to who was removed, and open from its beginning to who comes later', async () => {
    const room = new Room();
    const desk = await room.begin();
    const phone = await room.join('phone', 'teacher');
    await room.say(desk, 'run', 'before');
    await room.keep(...(await desk.shared.remove(phone.id, 1)));
    await room.say(desk, 'run', 'after');
    await room.say(desk, 'private', 'after in private');
    expect(heard(phone)).toEqual(['before']);
    await room.say(phone, 'run', 'a thief');
    expect(heard(desk)).toEqual(['before', 'after', 'after in private']);
    const laptop = await room.join('laptop', 'teacher');
    expect(heard(laptop)).toEqual(['before', 'after', 'after in private']);
    await room.keep(...(await desk.shared.remove(laptop.id, 1)));
    const last = await room.join('another', 'owner');
    await room.say(last, 'run', 'still');
    expect(heard(last)).toEqual(['before', 'after', 'after in private', 'still']);
    expect(heard(desk)).toEqual(heard(last));
  });

  it('lets in who holds an invitation from before the keys changed', async () => {
    const room = new Room();
    const desk = await room.begin();
    const phone = await room.join('phone', 'teacher');
    const { record, box, secret } = await desk.shared.invite('owner', LATER);
    await room.keep(record);
    await room.keep(...(await desk.shared.remove(phone.id, 1)));
    await room.say(desk, 'run', 'after');
    const opened = await openInvitation(secret, box);
    if (!opened) throw new Error('The sheet does not open.');
    const own = await ownDevice(await makeKeys(false), 'new-laptop');
    const spec = {
      classId: classId('class'),
      own,
      founder: opened.founder,
      invitation: opened,
      newId,
    };
    const shared = createSharedClass(spec);
    await room.keep(await shared.comeIn(opened));
    const texts: Taken[] = [];
    for (const kept of room.kept) texts.push(...(await shared.take(kept, () => undefined)));
    expect(heard({ taken: texts })).toEqual(['after']);
  });

  it('sets aside what is forged, repeated for another class, or from a false beginning', async () => {
    const room = new Room();
    const desk = await room.begin();
    const good = await room.say(desk, 'run', 'good');
    if (!good) throw new Error('Nothing was sealed.');
    await room.keep({ ...good, id: 'copied' }, { ...good, lane: 'private' }, { ...good, epoch: 2 });
    expect(asides(desk)).toEqual(['wrong-signature', 'wrong-signature', 'old-epoch']);
    const [found] = room.kept;
    const other = createSharedClass({
      classId: classId('other'),
      own: desk.own,
      founder: desk.id,
      invitation: null,
      newId,
    });
    expect(await other.take(found as KeptRecord, () => undefined)).toMatchObject([
      { kind: 'aside' },
    ]);
    const deceived = createSharedClass({
      classId: classId('class'),
      own: desk.own,
      founder: 'somebody else',
      invitation: null,
      newId,
    });
    expect(await deceived.take(found as KeptRecord, () => undefined)).toMatchObject([
      { kind: 'aside', why: 'another-founder' },
    ]);
  });

  it('opens no invitation with another secret', async () => {
    const room = new Room();
    const desk = await room.begin();
    const [one, other] = [await desk.shared.invite('aide', 9), await desk.shared.invite('aide', 9)];
    expect(await openInvitation(other.secret, one.box)).toBeNull();
    expect((await openInvitation(one.secret, one.box))?.classId).toBe('class');
  });
});
