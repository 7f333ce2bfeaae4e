import type { Marking } from './belief/marking.ts';

/** What a teacher must know of figures by how she marks; null where right and wrong are both marked. */
export function markingSaid(marking: Marking): string | null {
  switch (marking) {
    case 'all':
      return null;
    case 'mistakes-beside-class':
      return 'Most children are named here only when they go wrong. What one child can do is then partly a guess from what went right together: call on some by name, or give a short check.';
    case 'only-mistakes':
      return 'Only mistakes are marked here. They show where children stumble, but not how much they know: mark right readings too, or give a short check.';
  }
}
