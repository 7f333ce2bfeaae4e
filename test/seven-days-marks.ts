import { readCards } from '../core/learners/written-cards.ts';
import { STORY_CHILDREN } from './seven-days.ts';

/** How a card went: `r` right, `m` missed, in their order, and what was heard of the missed ones. */
export interface ScriptedMarks {
  readonly marks: string;
  readonly heard: readonly string[];
}

/**
 * How each card of a child of the story went, counted straight from the script. A word that went
 * wrong, not said where, tells nothing.
 */
export function marksOf(name: string): ReadonlyMap<string, ScriptedMarks> {
  const all = new Map<string, { marks: string; heard: string[] }>();
  for (const written of (STORY_CHILDREN[name]?.days ?? []).join(' ').split(' ').filter(Boolean)) {
    const [letters = '', slip] = written.split('!');
    const [place, said = ''] = (slip ?? '').split(':');
    const read = readCards(letters, '');
    if (!('ids' in read) || slip === '') continue;
    const end = slip === undefined ? read.ids.length : Number(place);
    read.ids.slice(0, end).forEach((id, at) => {
      const one = all.get(id) ?? { marks: '', heard: [] };
      all.set(id, one);
      const isMissed = slip !== undefined && at === end - 1;
      one.marks += isMissed ? 'm' : 'r';
      if (isMissed && said !== '') one.heard.push(said);
    });
  }
  return all;
}

/** How often a mark stands in some: `r` or `m`. */
export function countMarks(marks: string, mark: 'r' | 'm'): number {
  return marks.split(mark).length - 1;
}
