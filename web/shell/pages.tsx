import type { ComponentType } from 'preact';
import { About } from '../screens/about/about.tsx';
import { DictationPage } from '../screens/dictation/dictation.tsx';
import { Learned } from '../screens/learned/learned.tsx';
import { Order } from '../screens/order/order.tsx';
import { SettingsPage } from '../screens/settings/settings.tsx';
import { Stage } from '../screens/stage/stage.tsx';
import { TextPage } from '../screens/text/text.tsx';
import { Today } from '../screens/today/today.tsx';
import { Words } from '../screens/words/words.tsx';
import type { Screen } from '../state/screens.ts';
import { Later } from './later.tsx';

/** What is shown of each screen: at once, or fetched when it is first asked for. */
export const PAGES: Readonly<Record<Screen, ComponentType>> = {
  learned: Learned,
  order: Order,
  today: Today,
  board: later(() => import('../screens/board/board.tsx').then(({ BoardPage }) => BoardPage)),
  stage: Stage,
  desk: later(() => import('../screens/desk/desk.tsx').then(({ DeskPage }) => DeskPage)),
  after: later(() => import('../screens/after/after.tsx').then(({ AfterPage }) => AfterPage)),
  plan: later(() =>
    import('../screens/plan-sheet/plan-sheet.tsx').then(({ PlanPage }) => PlanPage),
  ),
  words: Words,
  text: TextPage,
  dictation: DictationPage,
  class: later(() => import('../screens/classes/classes.tsx').then(({ ClassPage }) => ClassPage)),
  known: later(() => import('../screens/known/known.tsx').then(({ KnownPage }) => KnownPage)),
  papers: later(() => import('../screens/papers/papers.tsx').then(({ PapersPage }) => PapersPage)),
  check: later(() => import('../screens/check/check.tsx').then(({ CheckPage }) => CheckPage)),
  reader: later(() => import('../screens/check/reader.tsx').then(({ ReaderPage }) => ReaderPage)),
  pages: later(() => import('../screens/pages/pages.tsx').then(({ PagesPage }) => PagesPage)),
  share: later(() => import('../screens/share/share.tsx').then(({ SharePage }) => SharePage)),
  join: later(() => import('../screens/join/join.tsx').then(({ JoinPage }) => JoinPage)),
  print: later(() => import('../screens/print/print.tsx').then(({ PrintPage }) => PrintPage)),
  settings: SettingsPage,
  about: About,
};

/** The screens that stand alone, without header and footer. */
export const ALONE: ReadonlySet<Screen> = new Set<Screen>(['stage', 'desk', 'reader']);

function later(load: () => Promise<ComponentType>): ComponentType {
  return () => <Later load={load} />;
}
