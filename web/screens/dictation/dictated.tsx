import { useMemo, useState } from 'preact/hooks';
import type { Dictation, DictationSources } from '../../../core/dictation/dictation.ts';
import { heardAlso } from '../../../core/dictation/heard-also.ts';
import { lettersShown } from '../../../core/language/card-id.ts';
import { Popover } from '../../controls/popover.tsx';
import { moreToDictate, setDictation } from '../../state/dictation-made.ts';
import { say } from './wording.ts';

interface DictatedProps {
  readonly now: Dictation;
  readonly sources: DictationSources;
  readonly kind: 'words' | 'sentences';
}

/** The words or the sentences, large; each opens to others that can take its place. */
export function Dictated({ now, sources, kind }: DictatedProps) {
  const [open, setOpen] = useState<{ readonly anchor: HTMLElement; readonly place: number }>();
  return (
    <>
      <ol class={`dictated of-${kind}`}>
        {now[kind].map(({ text, isNew, practices }, place) => (
          <li key={text} class="line">
            <button
              type="button"
              class="say"
              aria-haspopup="dialog"
              aria-label={say.dictated.swap(text, isNew)}
              onClick={(event) => setOpen({ anchor: event.currentTarget, place })}
            >
              {text}
            </button>
            {kind === 'words' && <HeardAlso word={text} sources={sources} />}
            {isNew && <span class="why-dictated">{say.dictated.new}</span>}
            {practices && (
              <span class="why-dictated">{say.dictated.wasMissed(lettersShown(practices))}</span>
            )}
          </li>
        ))}
      </ol>
      {open && now[kind][open.place] && (
        <Popover
          key={open.place}
          anchor={open.anchor}
          title={kind === 'words' ? say.dictated.swapThisWord : say.dictated.swapThisSentence}
          onClose={() => setOpen(undefined)}
        >
          <Swap
            now={now}
            sources={sources}
            kind={kind}
            place={open.place}
            onDone={() => {
              open.anchor.focus();
              setOpen(undefined);
            }}
          />
        </Popover>
      )}
    </>
  );
}

/** Of a word that is heard like another, that it wants a sentence. */
function HeardAlso({ word, sources }: { readonly word: string } & Pick<DictatedProps, 'sources'>) {
  const others = heardAlso(word, sources.lexicon);
  if (others.length === 0) return null;
  return (
    <span class="heard-also">{say.dictated.soundsLikeSay(others.join(say.dictated.and))}</span>
  );
}

function Swap({
  now,
  sources,
  kind,
  place,
  onDone,
}: DictatedProps & { readonly place: number; readonly onDone: () => void }) {
  const more = useMemo(() => moreToDictate(sources), [sources]);
  const here = now[kind][place]?.text ?? '';
  const shown = new Set(now[kind].map(({ text }) => text));
  const others = more[kind].filter(({ text }) => !shown.has(text));
  const put = (list: Dictation[typeof kind], said: string) => {
    setDictation({ ...now, [kind]: list }, said);
    onDone();
  };
  return (
    <>
      <p class="quiet small">
        {others.length > 0 ? say.dictated.putAnother : say.dictated.thereIsNoOther}
      </p>
      <div class={kind === 'words' ? 'choices' : 'choices whole-lines'}>
        {others.map((other) => (
          <button
            key={other.text}
            type="button"
            class="choice text"
            onClick={() => put(now[kind].with(place, other), say.dictated.swapped(here))}
          >
            {other.text}
            {other.isNew && <span class="why-other"> {say.dictated.new}</span>}
          </button>
        ))}
      </div>
      <button
        type="button"
        class="button"
        onClick={() => put(now[kind].toSpliced(place, 1), say.dictated.tookOut(here))}
      >
        {say.dictated.leaveItOutToday}
      </button>
    </>
  );
}
