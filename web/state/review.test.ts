import { describe, expect, it } from 'vitest';
import { classId } from '../../core/ids.ts';
import { type CardId, isSightId } from '../../core/language/card-id.ts';
import { type Day, makeDay, parseDay } from '../../core/learners/day.ts';
import { parseLog } from '../../core/log/log-file.ts';
import { observedClass } from '../../test/observed-class.ts';
import { today } from './day.ts';
import { observations } from './knowledge.ts';
import { children, openClass, store } from './open-class.ts';
import { beginPile, openPile, sayAnswer } from './papers.ts';
import { reasonToRead, reasonToSpell, reviewedParts, wantedOnBoard } from './review.ts';

/** Opens an invented class that was seen on these days. */
async function openObserved(days: readonly string[]): Promise<void> {
  const log = parseLog(observedClass(days));
  if ('error' in log) throw new Error(log.error.message);
  await store.append(log.events);
  await openClass(classId('room'));
}

describe('what a class has shown so far', () => {
  it('wishes nothing of the next warm-up and gives no reasons while nothing was noted', async () => {
    await openObserved([]);
    expect(observations.value).toEqual([]);
    expect(reviewedParts()).toBeNull();
    expect([reasonToRead('m=M'), reasonToSpell(['m=M'])]).toEqual([null, null]);
    expect(wantedOnBoard.value).toEqual([]);
  });

  it('feeds all three parts of it, and says why of every card', async () => {
    await openObserved([makeDay((parseDay(today()) as Day) - 1)]);
    const parts = reviewedParts();
    const [read, spelled] = [parts?.visual.filter(isSightId), parts?.auditory.filter(isSightId)];
    expect(parts?.visual.slice(12)).toEqual(read);
    expect(parts?.auditory.slice(6)).toEqual(spelled);
    for (const words of [read, spelled]) expect(words?.length).toBeGreaterThan(0);
    expect(parts?.blending).toEqual(wantedOnBoard.value);
    const missed: readonly CardId[] = ['e=EH', 'i=IH', 'b=B', 'd=D'];
    expect(parts?.visual).toEqual(expect.arrayContaining([...missed]));
    for (const id of missed) expect(reasonToRead(id)).toBe('missed 2 of 4 yesterday');
    for (const id of parts?.visual ?? []) expect(reasonToRead(id)).not.toBeNull();
    for (const id of parts?.auditory ?? []) expect(reasonToSpell([id])).not.toBeNull();
  });

  it('puts first in the auditory part what was not heard on the papers, and says so', async () => {
    await openObserved([makeDay((parseDay(today()) as Day) - 1)]);
    const [child] = children.value;
    const words = [{ word: 'ship', cards: ['sh=SH', 'i=IH', 'p=P'] as const, breaks: [] }];
    beginPile(words, today());
    const pile = openPile.value!;
    sayAnswer(pile, child!.id, pile.words[0]!, { kind: 'wrote', text: 'sip' });
    expect(reviewedParts()?.auditory[0]).toBe('sh=SH');
    expect(reviewedParts()?.auditory.filter((id) => !isSightId(id))).toHaveLength(6);
    expect(reasonToSpell(['sh=SH'])).toBe('not heard on one paper: count the sounds first');
  });
});
