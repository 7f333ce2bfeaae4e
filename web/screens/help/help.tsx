import './help.css';
import { useState } from 'preact/hooks';
import { beginFirstRun } from '../../state/first-run.ts';
import { linkTo } from '../../state/route.ts';
import { factsOf, type Screen } from '../../state/screens.ts';
import { WORDS } from '../../wording/help/glossary.ts';
import { TOPICS } from '../../wording/help/topics.ts';
import { topicsWith, wordsWith } from './find-help.ts';
import { Picture } from './picture.tsx';
import { TopicText } from './topic-text.tsx';
import { Walk } from './walk.tsx';
import { WordList } from './word-list.tsx';
import { say } from './wording.ts';

/** All help on one page: searched by words, printed as one guide. */
export function HelpPage() {
  const [sought, setSought] = useState('');
  const topics = topicsWith(sought);
  const words = wordsWith(sought);
  const isAll = sought.trim() === '';
  return (
    <article class="help">
      <h1>{say.help.help}</h1>
      <div class="help-tools">
        <label>
          {say.help.lookFor}
          <input
            type="search"
            value={sought}
            placeholder={say.help.nonsenseWords}
            autocomplete="off"
            onInput={(event) => setSought(event.currentTarget.value)}
          />
        </label>
        <a class="button next" href={linkTo('learned')} onClick={beginFirstRun}>
          {say.help.showMeTwoMinutes}
        </a>
        <button type="button" class="button" onClick={() => print()}>
          {say.help.printTheGuide}
        </button>
      </div>
      <p class="quiet small" role="status">
        {isAll ? say.help.onAnyPagePress : foundSaid(topics.length, words.length)}
      </p>
      {isAll && (
        <>
          <nav class="help-contents" aria-label={say.help.contents}>
            <a href={`#${anchorOf('walk')}`} onClick={(event) => jump(event, 'walk')}>
              {say.help.yourFirstHour}
            </a>
            {TOPICS.map(({ screen }) => (
              <a
                key={screen}
                href={`#${anchorOf(screen)}`}
                onClick={(event) => jump(event, screen)}
              >
                {factsOf(screen).title}
              </a>
            ))}
            <a href={`#${anchorOf('words')}`} onClick={(event) => jump(event, 'words')}>
              {say.help.words}
            </a>
          </nav>
          <section id={anchorOf('walk')} class="help-topic" tabIndex={-1}>
            <h2>{say.help.yourFirstHour}</h2>
            <Walk />
          </section>
        </>
      )}
      {topics.map((topic) => (
        <section key={topic.screen} id={anchorOf(topic.screen)} class="help-topic" tabIndex={-1}>
          <h2>
            <a href={linkTo(topic.screen)}>{factsOf(topic.screen).title}</a>
          </h2>
          <Picture of={topic.screen} />
          <TopicText topic={topic} />
        </section>
      ))}
      {words.length > 0 && (
        <section id={anchorOf('words')} class="help-topic" tabIndex={-1}>
          <h2>{say.help.words}</h2>
          <WordList words={isAll ? WORDS : words} />
        </section>
      )}
    </article>
  );
}

function foundSaid(pages: number, words: number): string {
  if (pages + words === 0) return say.help.nothingHasAll;
  const said = [
    ...(pages > 0 ? [`${pages} ${pages === 1 ? say.help.page : say.help.pages}`] : []),
    ...(words > 0 ? [`${words} ${words === 1 ? say.help.word : say.help.wordsFound}`] : []),
  ];
  return said.join(say.help.and);
}

function anchorOf(part: Screen | 'walk' | 'words'): string {
  return `help-${part}`;
}

/** The address names the screen alone, so that within it one jumps without it. */
function jump(event: MouseEvent, part: Screen | 'walk' | 'words'): void {
  event.preventDefault();
  const there = document.getElementById(anchorOf(part));
  there?.scrollIntoView({ block: 'start' });
  there?.focus({ preventScroll: true });
}
