import type { IncomingMessage } from 'node:http';
import type { Duplex } from 'node:stream';
import { type WebSocket, WebSocketServer } from 'ws';
import {
  type DeviceMessage,
  LONGEST_MESSAGE,
  makeMessage,
  PROTOCOL,
} from '../core/sharing/message.ts';
import { type Conversation, converse, type House } from './conversation.ts';
import { isProven, readMessage } from './session.ts';

/** Connections by WebSocket. */
export interface Sockets {
  /** Takes over a connection that asked to become one. */
  take(request: IncomingMessage, socket: Duplex, head: Buffer): void;
  /** Drops who has not answered since the last time, and asks the others whether they are there. */
  sweep(): void;
  close(): void;
}

/** So many messages may wait to be answered on one connection; more, and it is read no further. */
const MOST_WAITING = 20;

/** So many connections there are at most. */
const MOST_SOCKETS = 20_000;

/** Who has not said within so many milliseconds who it is, is let go. */
const PROVEN_WITHIN = 10_000;

/** Answers devices that speak by WebSocket, each in the order of its messages. */
export function createSockets(house: House): Sockets {
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
    attend(socket);
  });
  return {
    take(request, socket, head) {
      if (server.clients.size >= MOST_SOCKETS) {
        socket.end('HTTP/1.1 503 Service Unavailable\r\nRetry-After: 30\r\n\r\n');
        return;
      }
      server.handleUpgrade(request, socket, head, (opened) =>
        server.emit('connection', opened, request),
      );
    },
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

  function attend(socket: WebSocket): void {
    const { desk } = house;
    const { identity, now } = desk;
    const nonce = identity.challenge(now());
    let conversation: Conversation | null = null;
    let waiting = 0;
    let work = Promise.resolve();
    socket.send(makeMessage({ t: 'challenge', v: PROTOCOL, nonce, now: now() }));
    const unproven = setTimeout(() => socket.close(1008, 'not proven'), PROVEN_WITHIN);
    socket.on('close', () => {
      clearTimeout(unproven);
      conversation?.end();
    });
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

    async function take(message: DeviceMessage): Promise<void> {
      if (socket.readyState !== socket.OPEN) return;
      if (conversation !== null) return conversation.take(message);
      const isGood = message.t === 'proof' && message.nonce === nonce && isProven(desk, message);
      if (!isGood) return socket.close(1008, 'not proven');
      clearTimeout(unproven);
      conversation = converse(house, {
        device: message.device,
        send: (text, onTaken) => socket.send(text, () => onTaken?.()),
        pressure: () => socket.bufferedAmount,
        end: () => socket.close(1008, 'removed'),
      });
    }
  }
}
