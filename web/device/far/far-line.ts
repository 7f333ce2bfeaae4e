import {
  type DeviceMessage,
  makeMessage,
  parseServerMessage,
  type ServerMessage,
} from '../../../core/sharing/message.ts';
import { signText } from './cipher.ts';
import type { OwnDevice } from './own-device.ts';

/** A socket as browsers and Node's packages have it: what is used of it. */
export interface Socket {
  /** 1 while it is open, as a WebSocket has it; a socket without it tells of its end only. */
  readonly readyState?: number;
  send(text: string): void;
  close(): void;
  onmessage: ((event: { readonly data: unknown }) => void) | null;
  onclose: (() => void) | null;
  onerror: (() => void) | null;
}

/** A connection to a server on which this device has said who it is. */
export interface FarLine {
  /** The server's clock less this device's, in milliseconds. */
  readonly ahead: number;
  send(message: DeviceMessage): void;
  close(): void;
}

/** What is heard on a line. */
export interface Hearing {
  onMessage(message: ServerMessage): void;
  /** The line is gone; nothing more comes on it. */
  onEnd(): void;
}

const OPEN = 1;

/** Connects and says who this device is. Rejects when the line ends before the server has welcomed it. */
export function openLine(
  socket: Socket,
  own: OwnDevice,
  now: () => number,
  { onMessage, onEnd }: Hearing,
): Promise<FarLine> {
  return new Promise((resolve, reject) => {
    let line: FarLine | null = null;
    let isWelcome = false;
    // On a socket that is closing nothing is said: what was not answered is said again on the next line.
    const send = (message: DeviceMessage) => {
      if ((socket.readyState ?? OPEN) === OPEN) socket.send(makeMessage(message));
    };
    // Whatever is wrong, the end comes after it.
    socket.onerror = () => {};
    socket.onclose = () => {
      if (isWelcome) onEnd();
      else reject(new Error('The server did not welcome this device.'));
    };
    socket.onmessage = async ({ data }) => {
      const message = parseServerMessage(String(data));
      if (message === null) return socket.close();
      if (message.t === 'challenge') {
        const { nonce } = message;
        line = { ahead: message.now - now(), send, close: () => socket.close() };
        const { id: device, sign: key, keys } = own;
        const signature = await signText(keys.sign.privateKey, `sweepline/1 proof ${nonce}`);
        send({ t: 'proof', device, key, nonce, signature });
      } else if (message.t === 'welcome' && line !== null) {
        isWelcome = true;
        resolve(line);
      } else if (isWelcome) onMessage(message);
    };
  });
}
