import type { IncomingMessage } from 'node:http';
import type { Duplex } from 'node:stream';
import { type WebSocket, WebSocketServer } from 'ws';
import {
  LONGEST_MESSAGE,
  makeMessage,
  PROTOCOL,
  type ServerMessage,
} from '../core/sharing/message.ts';
import type { Followers, Line } from './followers.ts';
import { answer, type Desk, isProven, readMessage } from './session.ts';

/** Connections by WebSocket. */
export interface Sockets {
  /** Takes over a connection that asked to become one. */
  take(request: IncomingMessage, socket: Duplex, head: Buffer): void;
  /** Drops who has not answered since the last time, and asks the others whether they are there. */
  sweep(): void;
  close(): void;
}

/** So many classes can be followed on one connection. */
const MOST_CLASSES = 50;

/** So many messages may wait to be answered on one connection; more, and it is read no further. */
const MOST_WAITING = 20;

/** Answers devices that speak by WebSocket, each in the order of its messages. */
export function createSockets(desk: Desk, followers: Followers): Sockets {
  const server = new WebSocketServer({
    noServer: true,
    maxPayload: LONGEST_MESSAGE,
    // Compression costs memory for each connection, and what is sealed does not get shorter.
    perMessageDeflate: false,
  });
  const alive = new Set<WebSocket>();
  server.on('connection', (socket) => {
    alive.add(socket);
    socket.on('pong', () => alive.add(socket));
    socket.on('error', () => socket.terminate());
    converse(socket);
  });
  return {
    take: (request, socket, head) =>
      server.handleUpgrade(request, socket, head, (opened) =>
        server.emit('connection', opened, request),
      ),
    sweep() {
      for (const socket of server.clients) {
        if (!alive.delete(socket)) socket.terminate();
        else socket.ping();
      }
    },
    close() {
      for (const socket of server.clients) socket.terminate();
      server.close();
    },
  };

  function converse(socket: WebSocket): void {
    const { identity, now } = desk;
    const nonce = identity.challenge(now());
    const say = (message: ServerMessage) => socket.send(makeMessage(message));
    let line: Line | null = null;
    const followed = new Set<string>();
    let waiting = 0;
    let work = Promise.resolve();
    say({ t: 'challenge', v: PROTOCOL, nonce, now: now() });
    socket.on('close', () => line && followers.leave(line));
    socket.on('message', (data, isBinary) => {
      const message = isBinary ? null : readMessage(data);
      if (message === null) return socket.close(1007, 'not understood');
      waiting += 1;
      if (waiting >= MOST_WAITING) socket.pause();
      work = work.then(() => take(message)).catch(() => socket.close(1011, 'try again'));
      void work.then(() => {
        waiting -= 1;
        if (socket.isPaused) socket.resume();
      });
    });

    async function take(message: NonNullable<ReturnType<typeof readMessage>>): Promise<void> {
      if (socket.readyState !== socket.OPEN) return;
      if (message.t === 'proof') {
        if (line !== null || message.nonce !== nonce || !isProven(desk, message)) {
          return socket.close(1008, 'not proven');
        }
        line = {
          device: message.device,
          send: (text) => socket.send(text),
          pressure: () => socket.bufferedAmount,
          end: () => socket.close(1008, 'removed'),
        };
        return say({ t: 'welcome' });
      }
      if (line === null) return socket.close(1008, 'not proven');
      if (message.t !== 'follow') return say(await answer(desk, line.device, message));
      followed.add(message.c);
      if (followed.size > MOST_CLASSES) return socket.close(1008, 'too many classes');
      await followers.follow(line, message);
    }
  }
}
