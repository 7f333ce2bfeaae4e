import { expect, it } from 'vitest';
import { makeInTurn } from './in-turn.ts';

it('begins each piece of work when the one before has ended, failed or not', async () => {
  const inTurn = makeInTurn();
  const seen: string[] = [];
  const piece = (name: string, milliseconds: number, fails = false) =>
    inTurn(async () => {
      seen.push(`${name} begins`);
      await new Promise((resolve) => setTimeout(resolve, milliseconds));
      seen.push(`${name} ends`);
      if (fails) throw new Error(name);
      return name;
    });
  const all = await Promise.allSettled([
    piece('slow', 20),
    piece('bad', 5, true),
    piece('quick', 0),
  ]);
  expect(seen).toEqual([
    'slow begins',
    'slow ends',
    'bad begins',
    'bad ends',
    'quick begins',
    'quick ends',
  ]);
  expect(all.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
});
