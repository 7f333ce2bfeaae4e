import './app.css';
import { useErrorBoundary, useLayoutEffect } from 'preact/hooks';
import { About } from '../about/about.tsx';
import { DictationPage } from '../dictation/dictation.tsx';
import { Learned } from '../learned/learned.tsx';
import { Order } from '../order/order.tsx';
import { SettingsPage } from '../settings/settings.tsx';
import { Stage } from '../stage/stage.tsx';
import { TextPage } from '../text/text.tsx';
import { Today } from '../today/today.tsx';
import { Words } from '../words/words.tsx';
import { Banner } from './banner.tsx';
import { Broken } from './broken.tsx';
import { Footer } from './footer.tsx';
import { Header } from './header.tsx';
import { type Screen, shown } from './route.ts';
import { UndoBar } from './undo-bar.tsx';

const titles: Readonly<Record<Screen, string>> = {
  learned: 'What have they learned?',
  order: 'The order',
  today: 'Today’s warm-up',
  stage: 'Stage',
  words: 'Find words',
  text: 'Is this text decodable?',
  dictation: 'Dictation',
  settings: 'Settings',
  about: 'About',
};

/** The whole app: one screen at a time; the stage alone, all others between header and footer. */
export function App() {
  const [error, forget] = useErrorBoundary();
  const screen = shown.value;
  useLayoutEffect(() => {
    document.title = `${titles[screen]} · Sweepline`;
    scrollTo(0, 0);
  }, [screen]);
  if (error) return <Broken error={error} again={forget} />;
  if (screen === 'stage') return <Stage />;
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

function Page({ screen }: { readonly screen: Exclude<Screen, 'stage'> }) {
  if (screen === 'learned') return <Learned />;
  if (screen === 'order') return <Order />;
  if (screen === 'today') return <Today />;
  if (screen === 'words') return <Words />;
  if (screen === 'text') return <TextPage />;
  if (screen === 'dictation') return <DictationPage />;
  if (screen === 'settings') return <SettingsPage />;
  return <About />;
}
