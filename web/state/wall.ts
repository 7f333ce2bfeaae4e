/** Whether this screen is a wall: it shows the warm-up of a class that is not on this device. */
import { signal } from '@preact/signals';
import type { Forgotten, Wall } from '../device/far/wall.ts';

/** The wall that this window is; null when it is none, or has forgotten. */
export const wall = signal<Wall | null>(null);

/** Why it has forgotten; null before. */
export const forgotten = signal<Forgotten | null>(null);

/** What the address of the stage asks for on a wall. */
export const AS_WALL = 'wall';
