import type { IncomingMessage, ServerResponse } from 'node:http';
import {
  LONGEST_MESSAGE,
  makeMessage,
  PROTOCOL,
  type ServerMessage,
} from '../core/sharing/message.ts';
import type { Followers } from './followers.ts';
import { answer, type Desk, isProven, readMessage } from './session.ts';

/** So long a device may wait for something new, in milliseconds; proxies cut off after 30 seconds. */
const LONGEST_WAIT = 25_000;

/**
 * Answers devices whose network lets no WebSocket through: the same messages by plain requests, each with
 * its proof in the header `Sweepline-Proof`. `GET /v1/challenge`, `POST /v1/send` with one message, `GET
 * /v1/class/<id>/records?after=<place>&trace=<trace>&wait=<seconds>`. False when the address is none of these.
 */
export async function answerPoll(
  desk: Desk,
  followers: Followers,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<boolean> {
  const url = new URL(request.url ?? '/', 'http://here');
  const { identity, now } = desk;
  const say = (message: ServerMessage, status = 200) => {
    response.writeHead(status, { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' });
    response.end(makeMessage(message));
  };
  if (url.pathname === '/v1/challenge' && request.method === 'GET') {
    const nonce = identity.challenge(now());
    say({ t: 'challenge', v: PROTOCOL, nonce, now: now() });
    return true;
  }
  const classId = /^\/v1\/class\/([\w-]{1,100})\/records$/.exec(url.pathname)?.[1];
  if (url.pathname !== '/v1/send' && classId === undefined) return false;
  const proof = readMessage(request.headers['sweepline-proof'] ?? '');
  if (proof?.t !== 'proof' || !isProven(desk, proof)) {
    say({ t: 'closed', c: classId ?? 'none', why: 'not-proven' }, 401);
    return true;
  }
  if (classId === undefined) {
    const message = request.method === 'POST' ? readMessage(await bodyOf(request)) : null;
    if (message === null || message.t === 'proof' || message.t === 'follow') {
      say({ t: 'closed', c: 'none', why: 'not-understood' }, 400);
    } else say(await answer(desk, proof.device, message));
    return true;
  }
  const whole = (name: string) => Math.max(0, Math.floor(Number(url.searchParams.get(name)) || 0));
  const [after, trace] = [whole('after'), whole('trace')];
  const wait = Math.min(LONGEST_WAIT, whole('wait') * 1000);
  const first = await recordsFor(desk, proof.device, classId, after, trace);
  if (first.t === 'records' && first.records.length === 0 && after === first.head && wait > 0) {
    await followers.wait(classId, after, wait);
    say(await recordsFor(desk, proof.device, classId, after, trace));
  } else say(first);
  return true;
}

async function recordsFor(
  { store }: Desk,
  device: string,
  c: string,
  from: number,
  trace: number,
): Promise<ServerMessage> {
  const member = (await store.rightsOf(c))?.members.get(device);
  if (!member) return { t: 'closed', c, why: 'no-member' };
  if (member.removed) return { t: 'closed', c, why: 'removed' };
  const read = await store.read(c, from);
  if (!read) return { t: 'closed', c, why: 'no-class' };
  const { head, records } = read;
  if ((await store.traceAt(c, from)) !== trace) return { t: 'following', c, head, knows: false };
  return { t: 'records', c, from, to: from + records.length, head, records };
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
