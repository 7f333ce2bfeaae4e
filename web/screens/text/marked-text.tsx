import { useRef, useState } from 'preact/hooks';
import type { Passage } from '../../../core/texts/passage.ts';
import { becauseSaid, type ReadingGroup } from './because.ts';
import { cutTokens, runsOf } from './cut-tokens.ts';
import { WhyTip } from './why-tip.tsx';
import { say } from './wording.ts';

/** Words shown at first, and more at each wish; a whole book would slow the page. */
const first = 400;
const more = 1600;

interface Told {
  readonly anchor: HTMLElement;
  readonly word: string;
}

/** The text with the words that cannot be read yet marked; each tells why on hover, focus and tap. */
export function MarkedText({
  passage,
  standing,
}: {
  readonly passage: Passage;
  readonly standing: ReadingGroup;
}) {
  const [count, setCount] = useState(first);
  const [told, setTold] = useState<Told>();
  const closing = useRef<ReturnType<typeof setTimeout>>(undefined);
  const runs = runsOf(
    cutTokens(passage.tokens, count),
    (word) => passage.judged.get(word)?.decodable === false,
  );
  const judged = told && passage.judged.get(told.word);
  const tell = (anchor: HTMLElement, word: string) => {
    clearTimeout(closing.current);
    setTold({ anchor, word });
  };
  const hideSoon = () => {
    clearTimeout(closing.current);
    closing.current = setTimeout(() => setTold(undefined), 180);
  };
  return (
    <section aria-labelledby="marked-title">
      <h2 id="marked-title">{say.markedText.theText}</h2>
      <p class="small quiet">
        <span class="blocked-sample">{say.markedText.marked}</span>
        {say.markedText.cannotBeReadYet}
      </p>
      <div class="marked-text">
        {runs.map(({ text, blocked }, place) =>
          blocked === null ? (
            <span key={place}>{text}</span>
          ) : (
            <button
              key={place}
              type="button"
              class="blocked"
              aria-describedby={told?.word === blocked ? 'why-tip' : undefined}
              onMouseEnter={(event) => tell(event.currentTarget, blocked)}
              onFocus={(event) => tell(event.currentTarget, blocked)}
              onClick={(event) => tell(event.currentTarget, blocked)}
              onMouseLeave={hideSoon}
              onBlur={hideSoon}
              onKeyDown={(event) => {
                if (event.key === 'Escape') setTold(undefined);
              }}
            >
              {text}
            </button>
          ),
        )}
      </div>
      {passage.words > count && (
        <p class="more not-printed">
          <button type="button" class="button" onClick={() => setCount(count + more)}>
            {say.markedText.showMore}
          </button>{' '}
          <span class="quiet">
            {say.markedText.theFirstOfWords(
              count.toLocaleString('en-US'),
              passage.words.toLocaleString('en-US'),
            )}
          </span>
        </p>
      )}
      {told && judged && (
        <WhyTip
          anchor={told.anchor}
          onEnter={() => clearTimeout(closing.current)}
          onLeave={hideSoon}
        >
          <b>{judged.word}</b> {becauseSaid(judged, standing)}
        </WhyTip>
      )}
    </section>
  );
}
