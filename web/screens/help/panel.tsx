import './help.css';
import { useEffect, useRef } from 'preact/hooks';
import { linkTo } from '../../state/route.ts';
import { factsOf, type Screen } from '../../state/screens.ts';
import { TOPICS } from '../../wording/help/topics.ts';
import { TopicText } from './topic-text.tsx';
import { WordList } from './word-list.tsx';
import { say } from './wording.ts';

/** The help on the screen that is shown, over it, so that nothing of her work is left. */
export function HelpPanel({
  screen,
  onClose,
}: {
  readonly screen: Screen;
  readonly onClose: () => void;
}) {
  const sheet = useRef<HTMLDialogElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    sheet.current?.showModal();
    title.current?.focus();
  }, []);
  const topic = TOPICS.find((each) => each.screen === screen);
  return (
    <dialog class="help-panel" ref={sheet} onClose={onClose} aria-labelledby="help-panel-title">
      <h2 id="help-panel-title" ref={title} tabIndex={-1}>
        {factsOf(screen).title}
      </h2>
      {topic ? (
        <>
          <TopicText topic={topic} />
          {topic.words.length > 0 && (
            <>
              <h3>{say.panel.wordsYouMeetHere}</h3>
              <WordList words={topic.words} />
            </>
          )}
        </>
      ) : (
        <p>{say.panel.nothingNeedsExplainingHere}</p>
      )}
      <p class="help-panel-ways">
        <button type="button" class="button next" onClick={() => sheet.current?.close()}>
          {say.panel.close}
        </button>
        <a class="button" href={linkTo('help')} onClick={() => sheet.current?.close()}>
          {say.panel.allHelp}
        </a>
      </p>
    </dialog>
  );
}
