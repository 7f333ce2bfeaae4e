/** Keeps the windows of one browser in touch. */
export interface Link<Message> {
  /** Tells all others. */
  send(message: Message): void;
}

/** A link on a channel of this name. Where the browser has no channels, every window is on its own. */
export function openLink<Message>(
  name: string,
  onMessage: (message: Message) => void,
): Link<Message> {
  if (typeof BroadcastChannel === 'undefined') return { send() {} };
  const channel = new BroadcastChannel(name);
  channel.onmessage = ({ data }: MessageEvent<Message>) => onMessage(data);
  return { send: (message) => channel.postMessage(message) };
}
