import { parseServerMessage } from '../../../core/sharing/message.ts';
import type { Socket } from './far-line.ts';

/**
 * A socket that says the same by plain requests, for networks that let no WebSocket through. `base` is the
 * server's address, with `/v1` at its end.
 */
export function openPollingSocket(base: string): Socket {
  let proof: string | null = null;
  let isOver = false;
  let sending: Promise<unknown> = Promise.resolve();
  const ending = new AbortController();
  const socket: Socket = {
    onmessage: null,
    onclose: null,
    onerror: null,
    send(text) {
      // The first thing that a device says is its proof, which then stands for the connection.
      if (proof === null) {
        proof = text;
        void hear();
      } else {
        sending = sending.then(() => ask('send', text)).catch(end);
      }
    },
    close: end,
  };
  void begin();
  return socket;

  async function begin(): Promise<void> {
    try {
      const answer = await fetch(`${base}/challenge`, { signal: ending.signal });
      const text = await answer.text();
      if (!answer.ok || parseServerMessage(text)?.t !== 'challenge') return end();
      socket.onmessage?.({ data: text });
    } catch {
      end();
    }
  }

  async function hear(): Promise<void> {
    try {
      while (!isOver) {
        const heard: readonly unknown[] = await (await ask('hear')).json();
        for (const message of heard) {
          if (!isOver) socket.onmessage?.({ data: JSON.stringify(message) });
        }
      }
    } catch {
      end();
    }
  }

  /** Rejects when the connection is over, or nothing is reached. */
  async function ask(what: 'send' | 'hear', body?: string): Promise<Response> {
    const answer = await fetch(`${base}/${what}`, {
      headers: { 'Sweepline-Proof': proof ?? '' },
      signal: ending.signal,
      ...(body === undefined ? {} : { method: 'POST', body }),
    });
    if (!answer.ok) throw new Error('The connection is over.');
    return answer;
  }

  function end(): void {
    if (isOver) return;
    isOver = true;
    ending.abort();
    socket.onclose?.();
  }
}
