import { isObject } from '../../../core/log/is-value.ts';

/** What the windows of this browser tell each other that her other devices are told too. */
const CHANNELS = ['sweepline.warm-up', 'sweepline.windows'] as const;

/** Carries what windows say of a warm-up from one device to the others. */
export interface Bridge {
  /** Another device has said something, or is gone: then it is null. */
  hear(from: string, value: unknown): void;
  /** The others can be reached: whoever shows something says so, here and there. */
  reached(): void;
  close(): void;
}

/**
 * Makes the windows of other devices seem windows of this browser: what is said on its channels is told to
 * the others, and what they say comes out on the same channels, with `afar`, the device that it comes from.
 */
export function openBridge(say: (value: unknown) => void): Bridge {
  const windows = new Map<string, Set<string>>();
  const channels = new Map(
    CHANNELS.map((name) => {
      const channel = new BroadcastChannel(name);
      channel.onmessage = ({ data }: MessageEvent<unknown>) => say([name, data]);
      return [name as string, channel];
    }),
  );
  return {
    hear(from, value) {
      if (value === null) {
        for (const id of windows.get(from) ?? []) {
          channels.get('sweepline.windows')?.postMessage({ kind: 'gone', from: id, afar: from });
        }
        windows.delete(from);
        return;
      }
      const [name, data] = Array.isArray(value) ? value : [];
      if (!isObject(data)) return;
      if (name === 'sweepline.windows' && data.kind === 'here') {
        windows.set(from, (windows.get(from) ?? new Set()).add(String(data.from)));
      }
      channels.get(String(name))?.postMessage({ ...data, afar: from });
    },
    reached() {
      const who = { kind: 'who', from: '' };
      channels.get('sweepline.windows')?.postMessage(who);
      say(['sweepline.windows', who]);
      say(['sweepline.warm-up', { kind: 'ask' }]);
    },
    close() {
      for (const channel of channels.values()) channel.close();
    },
  };
}
