import './help.css';
import { useEffect, useRef } from 'preact/hooks';
import { linkTo } from '../../state/route.ts';
import { factsOf, type Screen } from '../../state/screens.ts';
import { TOPICS } from '../../wording/help/topics.ts';
import { TopicText } from './topic-text.tsx';
import { WordList } from './word-list.tsx';

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
              <h3>Words you meet here</h3>
              <WordList words={topic.words} />
            </>
          )}
        </>
      ) : (
        <p>Nothing needs explaining here.</p>
      )}
      <p class="help-panel-ways">
        <button type="button" class="button next" onClick={() => sheet.current?.close()}>
          Close
        </button>
        <a class="button" href={linkTo('help')} onClick={() => sheet.current?.close()}>
          All help
        </a>
      </p>
    </dialog>
  );
}
