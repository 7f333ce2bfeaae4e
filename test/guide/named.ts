import type { Page } from 'playwright-core';
import type { Screen } from '../../web/state/screens.ts';
import { cut, type Topic } from '../../web/wording/help/topic.ts';
import { TOPICS } from '../../web/wording/help/topics.ts';

/** What can bear a name that the help mentions. */
const NAMED = 'button, a, label, summary, legend, h1, h2, h3';

/** Which of these names nothing on the page bears, by what is read or heard of it; none if all are there. */
export async function missingFrom(
  page: Page,
  names: readonly string[],
): Promise<readonly string[]> {
  const there = (
    await page
      .locator(NAMED)
      .evaluateAll((all) =>
        all.map((each) => `${each.getAttribute('aria-label') ?? ''} ${each.textContent}`),
      )
  ).join('\n');
  return names.filter((name) => !there.includes(name));
}

/** The screens of the help, stage and desk last, since what is begun there changes the others. */
export const SCREENS_OF_HELP: readonly Screen[] = TOPICS.map(({ screen }) => screen).sort(
  (one, other) => Number(isRun(one)) - Number(isRun(other)),
);

function isRun(screen: Screen): boolean {
  return screen === 'stage' || screen === 'desk';
}

/** The names that a topic mentions. */
export function namesIn({ ways }: Pick<Topic, 'ways'>): readonly string[] {
  return ways.flatMap((way) => cut(way).flatMap(({ text, isName }) => (isName ? [text] : [])));
}
