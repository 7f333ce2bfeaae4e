import { WebSocket } from 'ws';
import type { ClassId } from '../../core/ids.ts';
import { traceAfter } from '../../core/sharing/follower.ts';
import {
  type DeviceMessage,
  makeMessage,
  parseServerMessage,
  type ServerMessage,
} from '../../core/sharing/message.ts';
import { type ClassRecord, type KeptRecord, signedText } from '../../core/sharing/record.ts';
import { makeRightsSaid } from '../../core/sharing/rights-said.ts';
import { makeKeys, signText } from '../../web/device/far/cipher.ts';
import { keysOf, type OwnDevice, ownDevice } from '../../web/device/far/own-device.ts';

type Said = ServerMessage['t'];

/** A device that speaks with a server word for word, to see what it answers. */
export class RawDevice {
  readonly own: OwnDevice;
  readonly heard: ServerMessage[] = [];
  /** Every record that came, in the order in which it came. */
  readonly records: KeptRecord[] = [];
  /** How far what came goes. */
  place = 0;
  /** Why the connection was ended; null while it is open. */
  ended: string | null = null;
  readonly #socket: WebSocket;
  #k = 0;
  readonly #waiting = new Set<() => void>();
  readonly #listening = new Set<(message: ServerMessage) => void>();

  private constructor(own: OwnDevice, socket: WebSocket) {
    this.own = own;
    this.#socket = socket;
    socket.on('message', (data) => {
      const message = parseServerMessage(String(data));
      if (message === null) throw new Error(`Not understood: ${String(data).slice(0, 200)}`);
      this.heard.push(message);
      for (const hear of this.#listening) hear(message);
      if (message.t === 'records') {
        this.records.push(...message.records.filter((one) => 'id' in one));
        this.place = message.to;
      }
      this.#wake();
    });
    socket.on('close', (code, reason) => {
      this.ended = `${code} ${reason}`;
      this.#wake();
    });
    socket.on('error', () => {});
  }

  /** Connects and says who it is; `from` is the address that a proxy would name. */
  static async connect(
    port: number,
    own?: OwnDevice,
    by = 'desk',
    from?: string,
  ): Promise<RawDevice> {
    const is = own ?? (await ownDevice(await makeKeys(false), by));
    const device = await RawDevice.open(port, is, from);
    const { nonce } = await device.next('challenge');
    await device.prove(nonce);
    await device.next('welcome');
    return device;
  }

  /** Connects and says nothing. */
  static async open(port: number, own: OwnDevice, from?: string): Promise<RawDevice> {
    const headers = from === undefined ? {} : { 'X-Forwarded-For': from };
    return new RawDevice(own, new WebSocket(`ws://127.0.0.1:${port}/v1`, { headers }));
  }

  async prove(nonce: string): Promise<void> {
    const { id: device, sign: key, keys } = this.own;
    const signature = await signText(keys.sign.privateKey, `sweepline/1 proof ${nonce}`);
    this.send({ t: 'proof', device, key, nonce, signature });
  }

  send(message: DeviceMessage): void {
    this.sendText(makeMessage(message));
  }

  sendText(text: string): void {
    this.#socket.send(text);
  }

  /** A record that this device signs, of which nobody could open the body. */
  async record(
    classId: ClassId,
    lane: ClassRecord['lane'],
    count: number,
    body: string,
  ): Promise<ClassRecord> {
    const { id: writer, keys } = this.own;
    const epoch = lane === 'rights' ? 0 : 1;
    const record = { id: `${writer}-${count}`, writer, count, epoch, lane, body };
    const signature = await signText(keys.sign.privateKey, signedText(classId, record));
    return { ...record, signature };
  }

  /** The record with which this device begins a class, of which nobody could open the secrets. */
  found(classId: ClassId): Promise<ClassRecord> {
    const sealed = { run: 'AAAA', private: 'AAAA' };
    const body = makeRightsSaid({ says: 'found', device: keysOf(this.own), sealed });
    return this.record(classId, 'rights', 0, body);
  }

  /** Tells of every message from now on, until what it gives is called. */
  listen(hear: (message: ServerMessage) => void): () => void {
    this.#listening.add(hear);
    return () => this.#listening.delete(hear);
  }

  /** Asks to keep records and gives the answer. */
  async append(c: ClassId, records: readonly ClassRecord[], pass?: string): Promise<ServerMessage> {
    const k = this.#k++;
    this.send({ t: 'append', k, c, records, ...(pass === undefined ? {} : { pass }) });
    return this.answer(k);
  }

  async deposit(c: ClassId, invite: string, box: string): Promise<ServerMessage> {
    const k = this.#k++;
    this.send({ t: 'deposit', k, c, invite, box });
    return this.answer(k);
  }

  async fetch(invite: string): Promise<string | null> {
    const k = this.#k++;
    this.send({ t: 'fetch', k, invite });
    const answered = await this.answer(k);
    return answered.t === 'fetched' ? answered.box : null;
  }

  /** Follows a class after these records of it. */
  follow(c: ClassId, known: readonly KeptRecord[] = []): void {
    const trace = known.reduce((before, { id }) => traceAfter(before, id), 0);
    this.send({ t: 'follow', c, after: known.length, trace });
  }

  async answer(k: number): Promise<ServerMessage> {
    return this.until(() => this.heard.find((message) => 'k' in message && message.k === k));
  }

  /** The next message of a kind; those before it are forgotten. */
  async next<Kind extends Said>(kind: Kind): Promise<Extract<ServerMessage, { t: Kind }>> {
    const found = await this.until(() => this.heard.find(({ t }) => t === kind));
    this.heard.splice(0, this.heard.indexOf(found) + 1);
    return found as Extract<ServerMessage, { t: Kind }>;
  }

  /** Resolves with what is asked for as soon as it is there; rejects when the connection ends before. */
  async until<Value>(find: () => Value | undefined | false | null): Promise<Value> {
    for (;;) {
      const found = find();
      if (found) return found;
      if (this.ended !== null) throw new Error(`The connection was ended: ${this.ended}`);
      await this.#change();
    }
  }

  /** Resolves when the server has ended the connection. */
  async untilEnded(): Promise<string> {
    while (this.ended === null) {
      await this.#change();
    }
    return this.ended;
  }

  #wake(): void {
    for (const wake of this.#waiting) wake();
    this.#waiting.clear();
  }

  #change(): Promise<void> {
    return new Promise((resolve) => this.#waiting.add(resolve));
  }

  close(): void {
    this.#socket.terminate();
  }

  /** Takes nothing more of what is sent. */
  stop(): void {
    this.#socket.pause();
  }
}
