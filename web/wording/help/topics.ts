import { BEFORE } from './before.ts';
import { CHILDREN } from './children.ts';
import type { Topic } from './topic.ts';
import { WARM_UP } from './warm-up.ts';
import { MAKING } from './words.ts';

/** The help on every screen, in the order of the guide. */
export const TOPICS: readonly Topic[] = [
  ...BEFORE.slice(0, 2),
  ...WARM_UP,
  ...CHILDREN,
  ...MAKING,
  ...BEFORE.slice(2),
];
