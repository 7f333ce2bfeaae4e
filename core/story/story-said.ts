import type { SoundStyle } from '../language/phonemes.ts';
import { cardsSaid, listSaid } from './card-said.ts';
import type { ChildStory, Strength, Trouble } from './child-story.ts';
import { familyName } from './families.ts';
import { waySaid } from './way-said.ts';

/**
 * The one sentence on a child, without its name, as a careful colleague would
 * write it: ‘Reads short vowels surely; drops the second consonant in st, bl and
 * fl: 7 of 12.’ Each number is one of the story's.
 */
export function storySaid(story: ChildStory, style: SoundStyle): string {
  const { asked, others, beyond, strengths, troubles } = story;
  if (asked === 0 && beyond.asked === 0) {
    return story.stumbled
      ? 'Stumbled in a word or more; it was not said at which card.'
      : 'Nothing was noted of this child alone yet.';
  }
  const clauses = [
    ...strengthsSaid(strengths),
    ...troubles.map((trouble) => troubleSaid(trouble, style)),
    ...(others > 0 ? [`${others} more ${others === 1 ? 'was' : 'were'} missed lately`] : []),
    ...(troubles.length === 0 && strengths.length > 0 ? [nothingMissed(story)] : []),
    ...(troubles.length === 0 && strengths.length === 0 && asked > 0 ? [plainSaid(story)] : []),
    ...(beyond.asked > 0
      ? [`beyond the group’s step, ${beyond.right} of ${beyond.asked} right`]
      : []),
  ];
  return `${capital(clauses.join('; '))}.`;
}

function strengthsSaid(strengths: readonly Strength[]): readonly string[] {
  const sure = strengths.filter((strength) => strength.sure);
  if (sure.length > 0) {
    const names = sure.map(({ family, secure, taught }) =>
      secure === taught ? familyName(family) : `${secure} of ${taught} ${familyName(family)}`,
    );
    return [`reads ${listSaid(names)} surely`];
  }
  return strengths.map(({ family, right, asked, read, taught }) => {
    return read === taught
      ? `reads ${familyName(family)} right, ${right} of ${asked}`
      : `read ${read} of the ${taught} ${familyName(family)}, right ${right} of ${asked} times`;
  });
}

function troubleSaid(trouble: Trouble, style: SoundStyle): string {
  return `${waySaid(trouble, cardsSaid(trouble.cards, style), 'one', style)}: ${trouble.times} of ${trouble.asked}`;
}

/** That nothing was missed lately, of no more than it is true of. */
function nothingMissed({ beyond }: ChildStory): string {
  return beyond.open === 0
    ? 'missed nothing lately'
    : 'missed nothing lately of what the group was taught';
}

/** Of a child that neither shines nor stumbles. */
function plainSaid(story: ChildStory): string {
  const { right, asked, cards, words } = story;
  const spellings = cards - words;
  const count = listSaid([
    ...(spellings > 0 ? [`${spellings} ${spellings === 1 ? 'spelling' : 'spellings'}`] : []),
    ...(words > 0 ? [`${words} ${words === 1 ? 'word' : 'words'} by sight`] : []),
  ]);
  return right === asked
    ? `read ${count} alone so far, right each time; too few readings to say more`
    : `read ${count} alone, right ${right} of ${asked} times; ${nothingMissed(story)}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
