/**
 * Everything that looks like something, on one page: all cards, the signs, every sheet, and how screens
 * look when there is nothing yet or something failed. For the eye (`npm run gallery`), and for
 * gallery.journey.ts, which holds it against what was seen before. Words and names are invented.
 */
import '../../web/look/layers.css';
import '../../web/look/fonts.css';
import '../../web/look/tokens.css';
import '../../web/look/base.css';
import '../../web/look/print.css';
import '../../web/controls/button.css';
import '../../web/controls/option.css';
import '../../web/controls/part.css';
import '../../web/shell/app.css';
import './gallery.css';
import { type ComponentChildren, render } from 'preact';
import { type CardShape, cardShape } from '../../core/language/card-shape.ts';
import { CORRESPONDENCES } from '../../core/language/correspondences.ts';
import { Card } from '../../web/controls/card.tsx';
import { PracticeNote } from '../../web/controls/check-note.tsx';
import { Sign, SignKey, SignShapes } from '../../web/controls/sign.tsx';
import { AfterPage } from '../../web/screens/after/after.tsx';
import { BoardPage } from '../../web/screens/board/board.tsx';
import { CheckPage } from '../../web/screens/check/check.tsx';
import { ClassPage } from '../../web/screens/classes/classes.tsx';
import { DictationPage } from '../../web/screens/dictation/dictation.tsx';
import { KnownPage } from '../../web/screens/known/known.tsx';
import { PagesPage } from '../../web/screens/pages/pages.tsx';
import { PagePreview } from '../../web/screens/print/page-preview.tsx';
import { viewOfPage } from '../../web/screens/print/view.ts';
import { TextPage } from '../../web/screens/text/text.tsx';
import { Today } from '../../web/screens/today/today.tsx';
import { Words } from '../../web/screens/words/words.tsx';
import { Broken } from '../../web/shell/broken.tsx';
import { Later } from '../../web/shell/later.tsx';
import { engine } from '../../web/state/engine-ready.ts';
import { fetchKit, kit } from '../../web/state/paper/kit.ts';
import { cardName } from '../../web/wording/card-name.ts';
import { allSheets } from './sheets.ts';

const SHAPES: readonly CardShape[] = [
  'tile',
  'arch',
  'split',
  'cluster',
  'welded',
  'cle',
  'ending',
  'carrier',
];

function Exhibit({
  name,
  children,
}: {
  readonly name: string;
  readonly children: ComponentChildren;
}) {
  return (
    <section class="exhibit" aria-label={name}>
      <h2>{name}</h2>
      {children}
    </section>
  );
}

function Cards({ shape }: { readonly shape: CardShape }) {
  const cards = CORRESPONDENCES.filter((card) => cardShape(card) === shape);
  return (
    <Exhibit name={`Cards: ${shape} (${cards.length})`}>
      <ul class="exhibit-cards">
        {cards.map(({ id }) => (
          <li key={id} title={cardName(id)}>
            <Card id={id} />
          </li>
        ))}
      </ul>
    </Exhibit>
  );
}

function Sheets() {
  const here = kit.value;
  if (here === null || here === 'failed') return null;
  return (
    <>
      {Object.entries(allSheets(here.typeface)).map(([name, pages]) => (
        <Exhibit key={name} name={`Sheet: ${name}`}>
          <div class="exhibit-sheets">
            {pages.map((page, at) => (
              <PagePreview key={at} view={viewOfPage(page)} name={`${name}, page ${at + 1}`} />
            ))}
          </div>
        </Exhibit>
      ))}
    </>
  );
}

const never = () => Promise.reject(new Error('gone'));
const EMPTY = {
  Today,
  'How it went': AfterPage,
  Board: BoardPage,
  Words,
  Text: TextPage,
  Dictation: DictationPage,
  Class: ClassPage,
  Known: KnownPage,
  Check: CheckPage,
  Pages: PagesPage,
} as const;

function Gallery() {
  return (
    <main class="page of-board">
      <h1>Gallery</h1>
      {SHAPES.map((shape) => (
        <Cards key={shape} shape={shape} />
      ))}
      <Exhibit name="Signs">
        <SignShapes />
        <p>
          <Sign word="secure" /> <Sign word="not yet seen" />
        </p>
        <SignKey />
        <PracticeNote />
      </Exhibit>
      <Exhibit name="Failed: a screen that did not arrive">
        <Later load={never} />
      </Exhibit>
      <Exhibit name="Failed: a screen that broke">
        <Broken error="Out of cards." again={() => {}} />
      </Exhibit>
      {Object.entries(EMPTY).map(([name, Page]) => (
        <Exhibit key={name} name={`Empty: ${name}`}>
          <Page />
        </Exhibit>
      ))}
      <Sheets />
    </main>
  );
}

engine.value = 'failed';
await fetchKit();
render(<Gallery />, document.getElementById('gallery') as HTMLElement);
document.documentElement.dataset.ready = '';
