/**
 * The windows in which the warm-up is open just now: the stage knows when a desk
 * leads it, and the desk whether a stage is there. A window says that it comes and that
 * it goes; one that has just come asks who is there.
 */
import { computed, signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { newId } from '../device/log/ids.ts';

/** What a window shows of the warm-up. */
export type Role = 'desk' | 'stage';

type Message = { readonly from: string } & (
  | { readonly kind: 'who' | 'gone' }
  | { readonly kind: 'here'; readonly role: Role }
);

const others = signal<ReadonlyMap<string, Role>>(new Map());
const me = newId();
let role: Role | null = null;
const channel =
  typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('sweepline.windows');

/** Whether a desk is open in another window. */
export const deskIsOpen = computed(() => [...others.value.values()].includes('desk'));

/** Whether a stage is open in another window. */
export const stageIsOpen = computed(() => [...others.value.values()].includes('stage'));

/** Says what this window shows, for as long as it does. */
export function useRole(mine: Role): void {
  useEffect(() => {
    role = mine;
    sayHere();
    post({ kind: 'who', from: me });
    const leave = () => {
      role = null;
      post({ kind: 'gone', from: me });
    };
    const comeBack = ({ persisted }: PageTransitionEvent) => {
      if (!persisted) return;
      role = mine;
      sayHere();
    };
    addEventListener('pagehide', leave);
    addEventListener('pageshow', comeBack);
    return () => {
      removeEventListener('pagehide', leave);
      removeEventListener('pageshow', comeBack);
      leave();
    };
  }, [mine]);
}

if (channel) {
  channel.onmessage = ({ data }: MessageEvent<Message>) => {
    if (!data || typeof data.from !== 'string') return;
    if (data.kind === 'who') return sayHere();
    const now = new Map(others.peek());
    if (data.kind === 'here') now.set(data.from, data.role);
    else now.delete(data.from);
    others.value = now;
  };
}

function sayHere(): void {
  if (role !== null) post({ kind: 'here', from: me, role });
}

function post(message: Message): void {
  channel?.postMessage(message);
}
