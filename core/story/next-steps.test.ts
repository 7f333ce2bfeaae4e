import { expect, it } from 'vitest';
import type { CardId } from '../language/card-id.ts';
import type { Trouble } from './child-story.ts';
import { goOnSaid, nextSteps } from './next-steps.ts';

const trouble = (
  way: Trouble['way'],
  cards: readonly CardId[],
  sound: string | null = null,
): Trouble => ({
  way,
  sound,
  cards,
  times: 2,
  asked: 3,
});

// Each was read aloud as a colleague would say it.
it.each<[Trouble, string]>([
  [
    trouble('drops-second', ['st=S+T', 'bl=B+L']),
    'Read st and bl one sound at a time: s, t, then st; b, l, then bl.',
  ],
  [trouble('drops-one', ['st=S+T']), 'Read st one sound at a time: s, t, then st.'],
  [
    trouble('swapped', ['i=IH']),
    'Touch each card in its order around short i while saying its sound, then read on.',
  ],
  [
    trouble('says', ['i=IH'], 'EH'),
    'Say /ĕ/ and /ĭ/ side by side, then turn short i among words with both.',
  ],
  [
    trouble('leaves-out', ['t=T']),
    'Touch each card while saying its sound, so that t is not passed over.',
  ],
  [
    trouble('letter-name', ['a=AE', 'e=EH']),
    'Ask for the sound of short a and short e, not the name: /ă/ and /ĕ/.',
  ],
  [trouble('added-vowel', ['b=B']), 'Say b short, with no vowel behind: /b/.'],
  [
    trouble('misses', ['sh=SH', 'ch=CH']),
    'Model sh and ch, say them together, then hear them alone.',
  ],
])('%j', (one, said) => {
  expect(nextSteps({ troubles: [one] }, 'classroom')).toEqual([said]);
});

it('asks for nothing where nothing was missed', () => {
  expect(nextSteps({ troubles: [] }, 'classroom')).toEqual([]);
});

const seen = (asked: number, stumbled: boolean, open: number) => ({
  asked,
  stumbled,
  beyond: { asked: open, right: 0, open },
});

it.each<[ReturnType<typeof seen>, string]>([
  [seen(4, false, 0), 'Nothing was missed lately. Call on Mina for what is new.'],
  [
    seen(4, false, 1),
    'Nothing was missed lately of what the group was taught; what was, is beyond its step. Call on Mina for what is new.',
  ],
  [
    seen(0, true, 0),
    'A word went wrong, and it was not said at which card. Hear Mina again, and say where.',
  ],
  [seen(0, false, 0), 'Call on Mina in a warm-up, or take a short check.'],
])('%j', (story, said) => {
  expect(goOnSaid(story, 'Mina')).toBe(said);
});
