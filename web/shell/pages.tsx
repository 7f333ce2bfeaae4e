import type { ComponentType } from 'preact';
import { Learned } from '../screens/learned/learned.tsx';
import type { Screen } from '../state/screens.ts';
import { fetched, Later } from './later.tsx';

/** How each screen is fetched that the first visit does not begin with. */
const LATER: Readonly<Record<Exclude<Screen, 'learned'>, () => Promise<ComponentType>>> = {
  order: () => import('../screens/order/order.tsx').then(({ Order }) => Order),
  today: () => import('../screens/today/today.tsx').then(({ Today }) => Today),
  board: () => import('../screens/board/board.tsx').then(({ BoardPage }) => BoardPage),
  stage: () => import('../screens/stage/stage.tsx').then(({ Stage }) => Stage),
  desk: () => import('../screens/desk/desk.tsx').then(({ DeskPage }) => DeskPage),
  after: () => import('../screens/after/after.tsx').then(({ AfterPage }) => AfterPage),
  plan: () => import('../screens/plan-sheet/plan-sheet.tsx').then(({ PlanPage }) => PlanPage),
  words: () => import('../screens/words/words.tsx').then(({ Words }) => Words),
  text: () => import('../screens/text/text.tsx').then(({ TextPage }) => TextPage),
  dictation: () =>
    import('../screens/dictation/dictation.tsx').then(({ DictationPage }) => DictationPage),
  class: () => import('../screens/classes/classes.tsx').then(({ ClassPage }) => ClassPage),
  known: () => import('../screens/known/known.tsx').then(({ KnownPage }) => KnownPage),
  papers: () => import('../screens/papers/papers.tsx').then(({ PapersPage }) => PapersPage),
  check: () => import('../screens/check/check.tsx').then(({ CheckPage }) => CheckPage),
  reader: () => import('../screens/check/reader.tsx').then(({ ReaderPage }) => ReaderPage),
  pages: () => import('../screens/pages/pages.tsx').then(({ PagesPage }) => PagesPage),
  share: () => import('../screens/share/share.tsx').then(({ SharePage }) => SharePage),
  join: () => import('../screens/join/join.tsx').then(({ JoinPage }) => JoinPage),
  print: () => import('../screens/print/print.tsx').then(({ PrintPage }) => PrintPage),
  settings: () =>
    import('../screens/settings/settings.tsx').then(({ SettingsPage }) => SettingsPage),
  help: () => import('../screens/help/help.tsx').then(({ HelpPage }) => HelpPage),
  about: () => import('../screens/about/about.tsx').then(({ About }) => About),
};

/** What is shown of a screen: at once, or once it is fetched. */
export function Page({ of: screen }: { readonly of: Screen }) {
  return screen === 'learned' ? <Learned /> : <Later key={screen} load={LATER[screen]} />;
}

/** Fetches a screen that is likely to be asked for next. Should it not come, it is fetched again when it is. */
export function bringNear(screen: Screen): void {
  if (screen !== 'learned') void fetched(LATER[screen]).catch(() => {});
}

/** The screens that stand alone, without header and footer. */
export const ALONE: ReadonlySet<Screen> = new Set<Screen>(['stage', 'desk', 'reader']);
