/** Keeps the windows of one browser in touch. */
export interface Link<Message> {
  /** Tells all others. */
  send(message: Message): void;
  /** Hears and tells nothing more. */
  close(): void;
}

/**
 * A link on a channel of this name. What another build sends and `isMessage` does not know is passed over. Where the browser has no channels, every window is on its own.
 */
export function openLink<Message>(
  name: string,
  isMessage: (value: unknown) => value is Message,
  onMessage: (message: Message) => void,
): Link<Message> {
  if (typeof BroadcastChannel === 'undefined') return { send() {}, close() {} };
  const channel = new BroadcastChannel(name);
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (isMessage(data)) onMessage(data);
  };
  return { send: (message) => channel.postMessage(message), close: () => channel.close() };
}
