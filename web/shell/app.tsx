import './app.css';
import { useErrorBoundary, useLayoutEffect } from 'preact/hooks';
import { Banner } from '../controls/banner.tsx';
import { SampleBar } from '../controls/sample-bar.tsx';
import { lookLike } from '../controls/use-look.ts';
import { sharedAs } from '../state/open-class.ts';
import { linkTo, shown } from '../state/route.ts';
import { factsOf } from '../state/screens.ts';
import { settings } from '../state/settings.ts';
import { Broken } from './broken.tsx';
import { FirstRun } from './first-run.tsx';
import { Header } from './header.tsx';
import { Help } from './help-key.tsx';
import { NotNoted } from './not-noted.tsx';
import { ALONE, bringNear, Page } from './pages.tsx';
import { SharingNews } from './sharing-news.tsx';
import { UndoBar } from './undo-bar.tsx';
import { say } from './wording.ts';

/** The whole app: one screen at a time; stage and desk alone, all others between header and footer. */
export function App() {
  const [error, forget] = useErrorBoundary();
  const screen = shown.value;
  useLayoutEffect(() => {
    document.title = say.app.sweepline(factsOf(screen).title);
    scrollTo(0, 0);
    if (screen === 'today') bringNear('stage');
  }, [screen]);
  const { pagesLook } = settings.value;
  useLayoutEffect(() => {
    if (!ALONE.has(screen)) lookLike(pagesLook);
  }, [screen, pagesLook]);
  if (error) return <Broken error={error} again={forget} />;
  if (ALONE.has(screen)) {
    return (
      <>
        <FirstRun screen={screen} />
        <Page of={screen} />
      </>
    );
  }
  return (
    <>
      <Header current={screen} />
      <SampleBar />
      <FirstRun screen={screen} />
      <Banner />
      <SharingNews />
      <NotNoted />
      <main class={`page of-${screen}`}>
        <Page of={screen} />
      </main>
      <Footer />
      <UndoBar />
      <Help screen={screen} />
    </>
  );
}

/** The foot of every page. */
function Footer() {
  return (
    <footer class="footer">
      <p>{sharedAs.value === null ? say.app.everythingStays : say.app.thisClassIsSealed}</p>
      <a href={linkTo('help')}>{say.app.help}</a>
      <a href={linkTo('about')}>{say.app.aboutAndLicenses}</a>
    </footer>
  );
}
