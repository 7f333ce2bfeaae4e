import type { ChildId, GroupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Day } from './day.ts';

/**
 * One thing that was read (or spelled), and how it went: all that the model of
 * what is known learns from. Where it comes from is another matter: the log of a
 * class (evidence-from-log.ts) or a table (evidence-csv.ts).
 */
export interface Observation {
  readonly day: Day;
  /** The child who did it alone; null when a group did it together. */
  readonly child: ChildId | null;
  /**
   * The groups it tells of, never empty. Of a child's own reading the first is the group whose
   * common figures stand behind the child's.
   */
  readonly groups: readonly GroupId[];
  /** `read`: from letters to sounds. `spell`: from a sound to its letters, a skill of its own. */
  readonly task: 'read' | 'spell';
  /** Card ids in the order of the word, never empty. One card alone stands in no place of a word. */
  readonly cards: readonly CardId[];
  readonly right: boolean;
  /**
   * Of what went wrong: the card that broke, counted from 1. Those before it went well, those after
   * it are unknown. Null when it was not said which.
   */
  readonly broke: number | null;
  /** What was heard for the card that broke: ARPABET sounds, or another kind of slip; null if unsaid. */
  readonly heard: string | null;
  /**
   * How the child came to read it, where that is known: in a short check, of which every word is marked,
   * or named only because it went wrong while others read it. Absent for a child who was called on, and
   * where it is not known.
   */
  readonly from?: 'check' | 'mistake';
  /** Of a reading together: the children who were away on that day, by id; it is no practice of theirs. */
  readonly away?: readonly ChildId[];
}
