import './app.css';
import { useErrorBoundary, useLayoutEffect } from 'preact/hooks';
import { Banner } from '../controls/banner.tsx';
import { About } from '../screens/about/about.tsx';
import { DictationPage } from '../screens/dictation/dictation.tsx';
import { Learned } from '../screens/learned/learned.tsx';
import { Order } from '../screens/order/order.tsx';
import { SettingsPage } from '../screens/settings/settings.tsx';
import { Stage } from '../screens/stage/stage.tsx';
import { TextPage } from '../screens/text/text.tsx';
import { Today } from '../screens/today/today.tsx';
import { Words } from '../screens/words/words.tsx';
import { type Screen, shown } from '../state/route.ts';
import { Broken } from './broken.tsx';
import { Footer } from './footer.tsx';
import { Header } from './header.tsx';
import { Later } from './later.tsx';
import { UndoBar } from './undo-bar.tsx';

const titles: Readonly<Record<Screen, string>> = {
  learned: 'What have they learned?',
  order: 'The order',
  today: 'Today’s warm-up',
  board: 'Board',
  stage: 'Stage',
  desk: 'Desk',
  after: 'How it went',
  plan: 'Plan for a substitute',
  words: 'Find words',
  text: 'Is this text decodable?',
  dictation: 'Dictation',
  class: 'Class',
  known: 'What do they know?',
  papers: 'Spelling papers',
  check: 'A short check',
  reader: 'To read',
  pages: 'Pages to hand on',
  print: 'Print',
  settings: 'Settings',
  about: 'About',
};

/** The whole app: one screen at a time; stage and desk alone, all others between header and footer. */
export function App() {
  const [error, forget] = useErrorBoundary();
  const screen = shown.value;
  useLayoutEffect(() => {
    document.title = `${titles[screen]} · Sweepline`;
    scrollTo(0, 0);
  }, [screen]);
  if (error) return <Broken error={error} again={forget} />;
  if (screen === 'stage') return <Stage />;
  if (screen === 'desk') return <Later load={loadDesk} />;
  if (screen === 'reader') return <Later load={loadReader} />;
  return (
    <>
      <Header current={screen} />
      <Banner />
      <main class="page">
        <Page screen={screen} />
      </main>
      <Footer />
      <UndoBar />
    </>
  );
}

const loadClass = () => import('../screens/classes/classes.tsx').then(({ ClassPage }) => ClassPage);
const loadKnown = () => import('../screens/known/known.tsx').then(({ KnownPage }) => KnownPage);
const loadAfter = () => import('../screens/after/after.tsx').then(({ AfterPage }) => AfterPage);
const loadPlan = () =>
  import('../screens/plan-sheet/plan-sheet.tsx').then(({ PlanPage }) => PlanPage);
const loadDesk = () => import('../screens/desk/desk.tsx').then(({ DeskPage }) => DeskPage);
const loadCheck = () => import('../screens/check/check.tsx').then(({ CheckPage }) => CheckPage);
const loadPapers = () =>
  import('../screens/papers/papers.tsx').then(({ PapersPage }) => PapersPage);
const loadPages = () => import('../screens/pages/pages.tsx').then(({ PagesPage }) => PagesPage);
const loadReader = () => import('../screens/check/reader.tsx').then(({ ReaderPage }) => ReaderPage);
const loadPrint = () => import('../screens/print/print.tsx').then(({ PrintPage }) => PrintPage);
const loadBoard = () => import('../screens/board/board.tsx').then(({ BoardPage }) => BoardPage);

function Page({ screen }: { readonly screen: Exclude<Screen, 'stage' | 'desk' | 'reader'> }) {
  if (screen === 'learned') return <Learned />;
  if (screen === 'order') return <Order />;
  if (screen === 'today') return <Today />;
  if (screen === 'board') return <Later load={loadBoard} />;
  if (screen === 'after') return <Later load={loadAfter} />;
  if (screen === 'plan') return <Later load={loadPlan} />;
  if (screen === 'words') return <Words />;
  if (screen === 'text') return <TextPage />;
  if (screen === 'dictation') return <DictationPage />;
  if (screen === 'pages') return <Later load={loadPages} />;
  if (screen === 'papers') return <Later load={loadPapers} />;
  if (screen === 'check') return <Later load={loadCheck} />;
  if (screen === 'class') return <Later load={loadClass} />;
  if (screen === 'known') return <Later load={loadKnown} />;
  if (screen === 'print') return <Later load={loadPrint} />;
  if (screen === 'settings') return <SettingsPage />;
  return <About />;
}
