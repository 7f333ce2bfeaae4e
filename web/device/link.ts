/**
 * Keeps the windows of one browser in step: each sends what it knows, and the
 * newest holds. A window that has just come asks, and the others answer.
 */
export interface Link<State> {
  /** Tells the others. */
  send(state: State): void;
  /** Asks the others what they know. */
  ask(): void;
}

type Message<State> = { readonly kind: 'ask' } | { readonly kind: 'state'; readonly state: State };

/**
 * A link on a channel of this name. `known` answers other windows that ask,
 * `onState` takes what they send. Where the browser has no channels, nothing is
 * sent and every window is on its own.
 */
export function openLink<State>(
  name: string,
  known: () => State | null,
  onState: (state: State) => void,
): Link<State> {
  if (typeof BroadcastChannel === 'undefined') return { send() {}, ask() {} };
  const channel = new BroadcastChannel(name);
  const post = (message: Message<State>) => channel.postMessage(message);
  channel.onmessage = ({ data }: MessageEvent<Message<State>>) => {
    if (data.kind === 'state') return onState(data.state);
    const state = known();
    if (state !== null) post({ kind: 'state', state });
  };
  return { send: (state) => post({ kind: 'state', state }), ask: () => post({ kind: 'ask' }) };
}
