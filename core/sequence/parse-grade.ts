import { GRADES, type Grade } from './sequence.ts';

/** Reads a grade as people write it: `K`, `Kindergarten`, `1`, `Grade 2`, `3rd`. Null if none. */
export function parseGrade(text: string): Grade | null {
  const plain = text.trim().toLowerCase();
  if (/^(kg?|kinder(garten)?)$/.test(plain)) return 'K';
  const match = /^(?:grade|gr\.?|g)?\s*([k0-9]+)(?:st|nd|rd|th)?(?:\s*grade)?$/.exec(plain);
  const named = match?.[1]?.toUpperCase();
  return GRADES.find((grade) => grade === named) ?? null;
}
