/**
 * The windows in which the warm-up is open just now, those on other devices of the class included: the stage
 * knows when a desk leads it, and the desk whether a stage is there. A window says that it comes and that
 * it goes; one that has just come asks who is there.
 */

import { computed, effect, signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { DrillId } from '../../core/ids.ts';
import { newId } from '../device/log/ids.ts';
import { running } from './running.ts';
import { isWindowHere, type WindowHere, type WindowRole } from './window-here.ts';

/** A window as it has said of itself. */
interface Shown {
  readonly role: WindowRole;
  readonly drillId: DrillId | null;
  readonly afar: string | null;
}

const others = signal<ReadonlyMap<string, Shown>>(new Map());
const me = newId();
let role: WindowRole | null = null;
const channel =
  typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('sweepline.windows');

/** Whether a desk is open in another window, on this device or, of the same warm-up, on another. */
export const deskIsOpen = computed(() => isOpen('desk'));

/** Whether a stage is open in another window, on this device or, of the same warm-up, on another. */
export const stageIsOpen = computed(() => isOpen('stage'));

/** Whether the stage of this warm-up is on another device, and none is here. */
export const stageIsAfar = computed(() => {
  const stages = [...others.value.values()].filter((one) => one.role === 'stage');
  return isOpen('stage') && stages.every(({ afar }) => afar !== null);
});

/** A warm-up that is open on another device, by its id; null for none. */
export const ledAfar = computed(
  () => [...others.value.values()].find(({ afar, drillId }) => afar && drillId)?.drillId ?? null,
);

/** Says what this window shows, for as long as it does. */
export function useRole(mine: WindowRole): void {
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
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (!isWindowHere(data)) return;
    if (data.kind === 'who') return sayHere();
    const now = new Map(others.peek());
    if (data.kind === 'here') {
      const { role, drillId = null, afar = null } = data;
      now.set(data.from, { role, drillId, afar });
    } else now.delete(data.from);
    others.value = now;
  };
}

effect(() => {
  running.value?.drillId;
  sayHere();
});

function isOpen(asked: WindowRole): boolean {
  const own = running.value?.drillId;
  return [...others.value.values()].some(
    ({ role, drillId, afar }) => role === asked && (afar === null || drillId === own),
  );
}

function sayHere(): void {
  const drillId = running.peek()?.rehearsed ? null : (running.peek()?.drillId ?? null);
  if (role !== null) post({ kind: 'here', from: me, role, drillId });
}

function post(message: WindowHere): void {
  channel?.postMessage(message);
}
