import './dictation.css';
import { useEffect, useMemo } from 'preact/hooks';
import type { Dictation, DictationSources } from '../../../core/dictation/dictation.ts';
import { heardAlso } from '../../../core/dictation/heard-also.ts';
import type { Lexicon } from '../../../core/words/lexicon.ts';
import { CopyButton } from '../../controls/copy-button.tsx';
import { FileButton } from '../../controls/file-button.tsx';
import { NotArrived } from '../../controls/not-arrived.tsx';
import {
  counts,
  dictation,
  ensureDictation,
  newestTaught,
  remakeDictation,
} from '../../state/dictation-made.ts';
import { engine, readyEngine, startEngine } from '../../state/engine-ready.ts';
import { progress } from '../../state/progress.ts';
import { linkTo } from '../../state/route.ts';
import { fetchSentences, sentences } from '../../state/sentences-ready.ts';
import { itemShort } from '../../wording/card-name.ts';
import { Dictated } from './dictated.tsx';
import { say } from './wording.ts';
import { WritingSheet } from './writing-sheet.tsx';

/** Today's dictation: words and sentences that ask only for what was taught, to read out and to print. */
export function DictationPage() {
  useEffect(() => void fetchSentences(), []);
  const ready = readyEngine();
  const all = sentences.value;
  const sources = useMemo<DictationSources | null>(
    () =>
      ready && all !== null && all !== 'failed'
        ? { lexicon: ready.lexicon, screen: ready.screen, sentences: all }
        : null,
    [ready, all],
  );
  const now = dictation.value;
  useEffect(() => {
    if (sources) ensureDictation(sources);
  }, [sources, now]);

  return (
    <>
      <div class="dictation-head">
        <div>
          <h1>{say.dictation.dictation}</h1>
          <p class="quiet">{standingSaid()}</p>
        </div>
        {now && sources && <Tools now={now} sources={sources} />}
      </div>
      {(engine.value === 'failed' || all === 'failed') && <Failed />}
      {!now && engine.value !== 'failed' && all !== 'failed' && (
        <p class="quiet">{say.dictation.fetchingWordsAndSentences}</p>
      )}
      {now && sources && <Parts now={now} sources={sources} />}
      {now && <WritingSheet words={now.words.length} sentences={now.sentences.length} />}
    </>
  );
}

function Failed() {
  return (
    <NotArrived
      onAgain={() => {
        if (engine.peek() === 'failed') void startEngine();
        void fetchSentences();
      }}
    >
      {say.dictation.theWordsOrSentences}
    </NotArrived>
  );
}

interface MadeProps {
  readonly now: Dictation;
  readonly sources: DictationSources;
}

function Tools({ now, sources }: MadeProps) {
  const wanted = counts.value;
  if (now.words.length + now.sentences.length === 0) return null;
  return (
    <p class="buttons not-printed">
      <CopyButton
        name={say.dictation.copy}
        text={() => asText(now, sources.lexicon)}
        said={say.dictation.copied}
      />
      <button
        type="button"
        class="button"
        onClick={() => remakeDictation(wanted, sources, say.dictation.reshuffled)}
      >
        {say.dictation.reshuffle}
      </button>
      <a class="button" href={linkTo('papers')}>
        {say.dictation.readThePapers}
      </a>
      <FileButton
        name={say.dictation.printSheet}
        class="button next"
        make={async () => {
          const { sheetFile } = await import('../../state/paper/paper-file.ts');
          return sheetFile('dictation', { dictation: () => now, sources });
        }}
      />
    </p>
  );
}

function Parts({ now, sources }: MadeProps) {
  const wanted = counts.value;
  const isEmpty = now.words.length + now.sentences.length === 0;
  return (
    <>
      {now.shortfall && (
        <div class="shortfall not-printed" role="note">
          <p>{isEmpty ? say.dictation.tooLittleWasTaught : now.shortfall}</p>
          <a class="button" href={linkTo('learned')}>
            {say.dictation.whatHaveTheyLearned}
          </a>
        </div>
      )}
      {!isEmpty && (
        <div class="dictation-parts">
          <section class="part" aria-labelledby="dictation-words">
            <div class="dictation-part-head">
              <h2 id="dictation-words">{say.dictation.words}</h2>
              <Count
                name={say.dictation.howManyWords}
                options={[4, 6, 8, 10, 12]}
                now={wanted.words}
                onCount={(words) =>
                  remakeDictation({ ...wanted, words }, sources, say.dictation.withWords(words))
                }
              />
            </div>
            <Dictated now={now} sources={sources} kind="words" />
          </section>
          <section class="part" aria-labelledby="dictation-sentences">
            <div class="dictation-part-head">
              <h2 id="dictation-sentences">{say.dictation.sentences}</h2>
              <Count
                name={say.dictation.howManySentences}
                options={[1, 2, 3, 4, 5]}
                now={wanted.sentences}
                onCount={(many) =>
                  remakeDictation(
                    { ...wanted, sentences: many },
                    sources,
                    say.dictation.withSentences(many),
                  )
                }
              />
            </div>
            <Dictated now={now} sources={sources} kind="sentences" />
          </section>
        </div>
      )}
    </>
  );
}

function Count({
  name,
  options,
  now,
  onCount,
}: {
  readonly name: string;
  readonly options: readonly number[];
  readonly now: number;
  readonly onCount: (count: number) => void;
}) {
  return (
    <select
      class="not-printed"
      aria-label={name}
      value={now}
      onChange={(event) => onCount(Number(event.currentTarget.value))}
    >
      {options.map((count) => (
        <option key={count} value={count}>
          {count}
        </option>
      ))}
    </select>
  );
}

function standingSaid(): string {
  const now = progress.value;
  if (now.upTo === 0 && now.added.length === 0) return say.dictation.nothingTaughtYet;
  const newest = newestTaught(now).map(itemShort).join(', ');
  return say.dictation.taughtUpToStep(now.upTo, newest === '' ? '' : say.dictation.newest(newest));
}

/** To be pasted elsewhere: a line each, with what a word is heard like here. */
function asText({ words, sentences: said }: Dictation, lexicon: Lexicon): string {
  const noted = words.map(({ text }) => {
    const others = heardAlso(text, lexicon);
    return others.length === 0
      ? text
      : `${text} (${say.dictated.soundsLikeSay(others.join(say.dictated.and))})`;
  });
  return [...noted, '', ...said.map(({ text }) => text)].join('\n').trim();
}
