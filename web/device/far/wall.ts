import type { ClassId, DrillId } from '../../../core/ids.ts';
import { isObject } from '../../../core/log/is-value.ts';
import type { ServerMessage } from '../../../core/sharing/message.ts';
import type { ClassRecord } from '../../../core/sharing/record.ts';
import { WALL_FOR } from '../../../core/sharing/rights.ts';
import { wishOfWall } from '../../../core/warm-up/for-wall.ts';
import type { SentPlace } from '../../../core/warm-up/sent.ts';
import { isWindowSaid } from '../../../core/warm-up/window-said.ts';
import { WARM_UP, WINDOWS } from './bridge.ts';
import { type FarLine, openLine, type Socket } from './far-line.ts';
import { createPieces, piecesOf } from './live-pieces.ts';
import type { OwnDevice } from './own-device.ts';
import { sealForWall, takeWallKey, unsealForWall, type WallKey } from './wall-key.ts';

/** A screen that shows one warm-up of a class, and knows nothing else of it. */
export interface Wall {
  /** A window of this device has said something on a channel: the desk hears what a wall may say. */
  say(value: unknown): void;
  /** The warm-up of which it has the key; null for none. */
  drillId(): DrillId | null;
  /** Forgets all of it: keys, connection, what was shown. */
  forget(): void;
}

/** Why a wall has forgotten: the warm-up is over, or its time is, or it was removed; she ended it here. */
export type Forgotten = 'over' | 'removed' | 'here';

/** What being a wall needs. */
export interface WallSpec {
  readonly classId: ClassId;
  /** Its keys, made for this and kept nowhere. */
  readonly own: OwnDevice;
  /** The record with which it comes in. */
  readonly coming: ClassRecord;
  readonly connect: () => Socket;
  readonly now: () => number;
  readonly wait: (ms: number) => Promise<void>;
  /** Is told what a device of the class says; of one that is gone, null. */
  readonly onHeard: (from: string, value: unknown) => void;
  /** Is told that the class was reached, and that it may be asked. */
  readonly onReached: () => void;
  readonly onForgotten: (why: Forgotten) => void;
}

/** A wall says so often that it is there, in milliseconds. */
const HERE_EVERY = 10_000;

/** The end stays on the wall for so long, in milliseconds: children look at it, and she may go back. */
const END_FOR = 2 * 60 * 1000;

/**
 * Becomes a wall; rejects with the reason's code when the class does not take it. It follows the class
 * without a record of it, takes the key of a warm-up when a device of the class gives it one, and forgets
 * itself when that is over. All of it is in memory.
 */
export async function openWall(spec: WallSpec): Promise<Wall> {
  const { classId, own, coming, connect, now, wait, onHeard, onReached, onForgotten } = spec;
  const pieces = createPieces();
  let line: FarLine | null = null;
  let key: WallKey | null = null;
  let pair: CryptoKeyPair | null = own.keys.box;
  let isIn = false;
  let said = 0;
  let isOver = false;
  let work: Promise<unknown> = Promise.resolve();
  let presence: ReturnType<typeof setInterval> | undefined;
  let end: ReturnType<typeof setTimeout> | undefined;
  const late = setTimeout(() => forget('over'), WALL_FOR);
  await new Promise<void>((resolve, reject) => {
    void stayConnected(resolve, (why) => {
      forget('here');
      reject(new Error(why));
    });
  });
  return {
    say(value) {
      const said = allowed(value);
      if (said !== null) inTurn(() => tell(said));
    },
    drillId: () => key?.drillId ?? null,
    forget: () => forget('here'),
  };

  async function stayConnected(whenIn: () => void, refused: (why: string) => void): Promise<void> {
    for (let tries = 0; !isOver; tries++) {
      try {
        let over: () => void = () => {};
        const ended = new Promise<void>((resolve) => {
          over = resolve;
        });
        line = await openLine(connect(), own, now, {
          onMessage: (message) => inTurn(() => take(message, whenIn, refused)),
          onEnd: () => over(),
        });
        if (isOver) line.close();
        else if (isIn) follow();
        else line.send({ t: 'append', k: 1, c: classId, records: [coming] });
        await ended;
        tries = 0;
      } catch {
        // The server cannot be reached; it is tried again.
      }
      line = null;
      clearInterval(presence);
      if (!isOver && !isIn && tries > 2) return refused('no-server');
      if (!isOver) await wait(Math.min(10_000, 500 * 2 ** Math.min(tries, 5)));
    }
  }

  function inTurn(what: () => Promise<void> | void): void {
    work = work.then(what).catch(() => {});
  }

  function follow(): void {
    line?.send({ t: 'follow', c: classId, after: 0, trace: 0 });
  }

  async function take(
    message: ServerMessage,
    whenIn: () => void,
    refused: (why: string) => void,
  ): Promise<void> {
    if (message.t === 'kept') {
      isIn = true;
      follow();
      whenIn();
    } else if (message.t === 'refused') refused(message.why);
    else if (message.t === 'later') {
      await wait(message.ms);
      line?.send({ t: 'append', k: 1, c: classId, records: [coming] });
    } else if (message.t === 'closed') forget('removed');
    else if (message.t === 'following') {
      sayHere();
      clearInterval(presence);
      presence = setInterval(sayHere, HERE_EVERY);
      if (key !== null) onReached();
    } else if (message.t === 'left') onHeard(message.from, null);
    else if (message.t === 'live') await takeLive(message.from, message.s, message.body);
  }

  async function takeLive(from: string, to: string, body: string): Promise<void> {
    if (to === own.id) {
      const given = pair && (await takeWallKey(pair, classId, own.id, body));
      if (given && !isOver) key = given;
      return;
    }
    const bytes = key && (await unsealForWall(key, classId, body));
    const value = bytes && pieces.take(from, bytes);
    // Meanwhile it may have forgotten.
    if (!Array.isArray(value) || key === null) return;
    const [name, data] = value;
    if (name === WARM_UP && isWindowSaid(data) && data.kind === 'place') endWith(data.place);
    onHeard(from, value);
  }

  /** At the end it waits a little, then forgets; unless she goes back, or begins another. */
  function endWith({ standing }: SentPlace): void {
    clearTimeout(end);
    end =
      standing.at < standing.order.length ? undefined : setTimeout(() => forget('over'), END_FOR);
  }

  function sayHere(): void {
    // That it is there is all that this says; there is no key yet to seal it with.
    line?.send({ t: 'here', c: classId, body: 'AA' });
  }

  /** Only what a wall may say: its wishes, that it is a stage, and to be told. */
  function allowed(value: unknown): unknown {
    const [name, data] = Array.isArray(value) ? value : [];
    if (!isObject(data) || key === null) return null;
    if (name === WINDOWS) return value;
    if (name !== WARM_UP) return null;
    const wish = data.kind === 'ask' ? data : wishOfWall(data, key.drillId);
    return wish && [WARM_UP, wish];
  }

  async function tell(value: unknown): Promise<void> {
    for (const bytes of piecesOf(value)) {
      const body = key && (await sealForWall(key, classId, bytes));
      if (body !== null) line?.send({ t: 'live', c: classId, s: own.id, n: ++said, body });
    }
  }

  function forget(why: Forgotten): void {
    if (isOver) return;
    isOver = true;
    key = null;
    pair = null;
    clearInterval(presence);
    clearTimeout(end);
    clearTimeout(late);
    line?.close();
    onForgotten(why);
  }
}
