import { isObject } from '../../../core/log/is-value.ts';

/** The channels on which the windows of this browser tell each other what her other devices are told too. */
export const WARM_UP = 'sweepline.warm-up';
export const WINDOWS = 'sweepline.windows';

/** Whether what another device says would turn a warm-up, more than ask how it stands. */
export function turnsWarmUp(value: unknown): boolean {
  const [name, data] = Array.isArray(value) ? value : [];
  return name === WARM_UP && isObject(data) && data.kind !== 'ask';
}

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
    [WARM_UP, WINDOWS].map((name) => {
      const channel = new BroadcastChannel(name);
      // What has come from afar goes nowhere else.
      channel.onmessage = ({ data }: MessageEvent<unknown>) => {
        if (!isObject(data) || data.afar === undefined) say([name, data]);
      };
      return [name, channel];
    }),
  );
  return {
    hear(from, value) {
      if (value === null) {
        for (const id of windows.get(from) ?? []) {
          channels.get(WINDOWS)?.postMessage({ kind: 'gone', from: id, afar: from });
        }
        windows.delete(from);
        return;
      }
      const [name, data] = Array.isArray(value) ? value : [];
      if (!isObject(data)) return;
      if (name === WINDOWS && data.kind === 'here') {
        windows.set(from, (windows.get(from) ?? new Set()).add(String(data.from)));
      }
      channels.get(String(name))?.postMessage({ ...data, afar: from });
    },
    reached() {
      const who = { kind: 'who', from: '' };
      channels.get(WINDOWS)?.postMessage(who);
      say([WINDOWS, who]);
      say([WARM_UP, { kind: 'ask' }]);
    },
    close() {
      for (const channel of channels.values()) channel.close();
    },
  };
}
