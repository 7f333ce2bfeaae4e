import type { Socket } from './far-line.ts';
import { openPollingSocket } from './polling-socket.ts';

/** A WebSocket that has not opened after so many milliseconds is held up by something. */
const OPENS_WITHIN = 4000;

/**
 * Gives sockets to a server, of which `base` is the address with `/v1` at its end: by WebSocket, and when
 * one did not open, the next by plain requests. After one of those has ended a WebSocket is tried again.
 */
export function createSockets(base: string): () => Socket {
  let isHeldUp = false;
  return () => {
    if (isHeldUp) {
      isHeldUp = false;
      return openPollingSocket(base);
    }
    const socket = new WebSocket(base.replace(/^http/, 'ws'));
    let hasOpened = false;
    const late = setTimeout(() => socket.close(), OPENS_WITHIN);
    socket.addEventListener('open', () => {
      hasOpened = true;
      clearTimeout(late);
    });
    socket.addEventListener('close', () => {
      clearTimeout(late);
      isHeldUp = !hasOpened;
    });
    return socket as Socket;
  };
}
