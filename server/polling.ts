import type { IncomingMessage, ServerResponse } from 'node:http';
import { LONGEST_MESSAGE, makeMessage, PROTOCOL } from '../core/sharing/message.ts';
import { type Conversation, converse, type House } from './conversation.ts';
import { isProven, readMessage } from './session.ts';

/** Connections of devices whose network lets no WebSocket through. */
export interface Polling {
  /** Answers a request; false when its address is none of these. */
  answer(request: IncomingMessage, response: ServerResponse): Promise<boolean>;
  /** Ends what was not asked for any longer. */
  sweep(): void;
  close(): void;
}

/** So long a device waits for something new at most, in milliseconds; proxies cut off after 30 seconds. */
const LONGEST_WAIT = 25_000;

/** Who does not ask for so long is gone, in milliseconds. */
const SILENT_FOR = 15_000;

/** So much may wait to be asked for; then the connection is ended. */
const MOST_BYTES = 4 * 1024 * 1024;

/** So many connections there are at most. */
const MOST_POLLING = 5000;

interface Session {
  conversation: Conversation | null;
  /** What is to be heard, as messages, and whom to tell that it was. */
  heard: string[];
  taken: (() => void)[];
  bytes: number;
  /** Wakes who waits to hear something. */
  wake: (() => void) | null;
  /** When it was heard last. */
  at: number;
  isOver: boolean;
  work: Promise<unknown>;
}

/**
 * The same conversation as by WebSocket, by plain requests. `GET /v1/challenge` gives the challenge; every
 * other request has the proof in its header `Sweepline-Proof`, which stands for the connection. `POST
 * /v1/send` takes one message, and `GET /v1/hear` gives all that was said since the last time as a JSON
 * array, or waits for something. A connection that is over answers 410; then the device begins a new one.
 */
export function createPolling(house: House): Polling {
  const { desk } = house;
  const sessions = new Map<string, Session>();
  return {
    async answer(request, response) {
      const path = (request.url ?? '/').split('?', 1)[0];
      const what = `${request.method} ${path}`;
      const say = (status: number, text: string) => {
        response.writeHead(status, {
          'Content-Type': 'application/json',
          'Cache-Control': 'no-store',
        });
        response.end(text);
        return true;
      };
      if (what === 'GET /v1/challenge') {
        const now = desk.now();
        const nonce = desk.identity.challenge(now);
        return say(200, makeMessage({ t: 'challenge', v: PROTOCOL, nonce, now }));
      }
      if (what !== 'POST /v1/send' && what !== 'GET /v1/hear') return false;
      const session = sessionOf(String(request.headers['sweepline-proof'] ?? ''));
      if (session === null) return say(401, '[]');
      if (session.isOver) return say(410, '[]');
      if (what === 'GET /v1/hear') return say(200, await hear(session, response));
      const message = readMessage(await bodyOf(request));
      if (message === null) return say(400, '[]');
      // One after the other, as they came.
      session.work = session.work
        .then(() => session.conversation?.take(message))
        .catch(() => end(session));
      await session.work;
      return say(session.isOver ? 410 : 200, '[]');
    },
    sweep() {
      for (const [proof, session] of sessions) {
        const isSilent = session.wake === null && desk.now() - session.at > SILENT_FOR;
        if (isSilent && !session.isOver) end(session);
        // It is known as over for as long as its proof would be taken for a new one.
        if (desk.now() - session.at > 11 * 60_000) sessions.delete(proof);
      }
    },
    close() {
      for (const session of sessions.values()) end(session);
    },
  };

  /** The connection that a proof stands for; null when it is a false one, or there are too many. */
  function sessionOf(text: string): Session | null {
    const known = sessions.get(text);
    if (known) return known;
    const proof = readMessage(text);
    if (proof?.t !== 'proof' || !isProven(desk, proof) || sessions.size >= MOST_POLLING)
      return null;
    const session: Session = {
      conversation: null,
      heard: [],
      taken: [],
      bytes: 0,
      wake: null,
      at: desk.now(),
      isOver: false,
      work: Promise.resolve(),
    };
    session.conversation = converse(house, {
      device: proof.device,
      send(message, onTaken) {
        session.heard.push(message);
        session.bytes += message.length;
        if (onTaken) session.taken.push(onTaken);
        if (session.bytes > MOST_BYTES) end(session);
        session.wake?.();
      },
      pressure: () => session.bytes,
      end: () => end(session),
    });
    sessions.set(text, session);
    return session;
  }

  function end(session: Session): void {
    if (session.isOver) return;
    session.isOver = true;
    session.conversation?.end();
    session.wake?.();
  }

  async function hear(session: Session, response: ServerResponse): Promise<string> {
    session.wake?.();
    if (session.heard.length === 0) {
      await new Promise<void>((resolve) => {
        const wake = () => {
          clearTimeout(timer);
          if (session.wake === wake) session.wake = null;
          resolve();
        };
        const timer = setTimeout(wake, LONGEST_WAIT);
        session.wake = wake;
        response.once('close', wake);
      });
    }
    const { heard, taken } = session;
    Object.assign(session, { heard: [], taken: [], bytes: 0, at: desk.now() });
    for (const tell of taken) tell();
    return `[${heard.join(',')}]`;
  }
}

/** The body as text; empty when it is too long. */
async function bodyOf(request: IncomingMessage): Promise<string> {
  const parts: Buffer[] = [];
  let bytes = 0;
  for await (const part of request) {
    bytes += part.length;
    if (bytes > LONGEST_MESSAGE) return '';
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}
