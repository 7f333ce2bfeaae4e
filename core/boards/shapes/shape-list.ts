import { BEAT_SHAPES } from './beat-shapes.ts';
import { CLUSTER_SHAPES } from './cluster-shapes.ts';
import { LONGER_SHAPES } from './longer-shapes.ts';
import type { Shape } from './shapes.ts';
import { SHORT_SHAPES } from './short-shapes.ts';

/** Every shape, short words first. */
export const SHAPES: readonly Shape[] = [
  ...SHORT_SHAPES,
  ...CLUSTER_SHAPES,
  ...LONGER_SHAPES,
  ...BEAT_SHAPES,
];

/** Shapes by id: `closed`, `silent-e`, `consonant-le`. */
export const shapeById: ReadonlyMap<string, Shape> = new Map(
  SHAPES.map((shape) => [shape.id, shape]),
);
