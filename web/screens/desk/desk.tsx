import './desk.css';
import { useEffect, useState } from 'preact/hooks';
import { readerAt } from '../../../core/warm-up/calling.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { Banner } from '../../controls/banner.tsx';
import { KeySheet } from '../../controls/key-sheet.tsx';
import { useLook } from '../../controls/use-look.ts';
import { keepAwake } from '../../device/full-screen.ts';
import { dictation, ensureDictation } from '../../state/dictation-made.ts';
import { loadSentences } from '../../state/engine.ts';
import { engine, readyEngine, startEngine } from '../../state/engine-ready.ts';
import { ledBy } from '../../state/led-by.ts';
import { children } from '../../state/open-class.ts';
import { goTo, linkTo } from '../../state/route.ts';
import { settings } from '../../state/settings.ts';
import { callChild, setDictated } from '../../warm-up/acts.ts';
import type { KeyWish } from '../../warm-up/keys.ts';
import { isOver, moments, running } from '../../warm-up/running.ts';
import { useWarmUp } from '../../warm-up/take-up.ts';
import { doWish, useKeys } from '../../warm-up/use-keys.ts';
import { useRole } from '../../warm-up/windows.ts';
import { Bar } from './bar.tsx';
import { Blendings } from './blendings.tsx';
import { Calling } from './calling.tsx';
import { Coming } from './coming.tsx';
import { Head } from './head.tsx';
import { Now } from './now.tsx';
import { Over } from './over.tsx';
import { ReaderLine } from './reader-line.tsx';
import { Tools } from './tools.tsx';
import { WhoSheet } from './who-sheet.tsx';
import { say } from './wording.ts';

/** The desk: all she needs while the children look at the stage. */
export function DeskPage() {
  const now = useWarmUp();
  const [keysShown, setKeysShown] = useState(false);
  const [asksWho, setAsksWho] = useState(false);
  useRole('desk');
  useLook();
  useDictated();
  useEffect(() => {
    ledBy.value = 'desk';
    addEventListener('mousedown', keepFocus);
    return () => removeEventListener('mousedown', keepFocus);
  }, []);
  useEffect(keepAwake, []);
  const onWish = (wish: KeyWish) => {
    if (doWish(wish)) return;
    if (wish === 'leave') goTo(now && isOver(now) && !now.rehearsed ? 'after' : 'today');
    else if (wish === 'keys') setKeysShown(true);
    else if (wish === 'who' && children.peek().length > 0) setAsksWho(true);
  };
  useKeys(onWish);
  if (!now) return <Waiting />;
  const { standing } = now;
  const part = momentAt(standing, moments.value)?.part;
  return (
    <div class={`desk ${settings.value.hand}-hand`}>
      <Head now={now} onWish={onWish} />
      <Banner />
      {!isOver(now) && <ReaderLine now={now} onWho={() => setAsksWho(true)} />}
      {isOver(now) ? (
        <Over now={now} />
      ) : (
        <main class="desk-main">
          <Now now={now} />
          <div class="desk-side">
            <Tools now={now} onWish={onWish} />
            <Coming now={now} />
            {standing.dictating === null && <Calling now={now} onWho={() => setAsksWho(true)} />}
            {part === 'blending' && <Blendings now={now} />}
          </div>
        </main>
      )}
      <Bar now={now} onWish={onWish} />
      {asksWho && (
        <WhoSheet
          title={say.desk.whoReadsNow}
          now={readerAt(now.calling, standing.at)}
          onWho={(child) => child !== null && callChild(child)}
          onClose={() => setAsksWho(false)}
        />
      )}
      {keysShown && <KeySheet where="desk" onClose={() => setKeysShown(false)} />}
    </div>
  );
}

/** A button that was clicked does not keep the focus: the next press of space goes on. */
function keepFocus(event: MouseEvent): void {
  if ((event.target as Element).closest('.desk :is(button, label, summary)'))
    event.preventDefault();
}

function Waiting() {
  return (
    <main class="desk-waiting">
      {engine.value === 'failed' ? (
        <>
          <h1>{say.desk.theWordList}</h1>
          <p>{say.desk.onceItHasBeen}</p>
          <p class="desk-ways">
            <button type="button" class="button next" onClick={startEngine}>
              {say.desk.tryAgain}
            </button>
            <a class="button" href={linkTo('today')}>
              {say.desk.backToThePlan}
            </a>
          </p>
        </>
      ) : (
        <p class="quiet" role="status">
          {say.desk.gettingReady}
        </p>
      )}
    </main>
  );
}

/** Has today's dictation at hand for after the sounds: the words of the dictation page. */
function useDictated(): void {
  const ready = readyEngine();
  const [sentences, setSentences] = useState<readonly string[]>();
  const words = dictation.value?.words;
  const drillId = running.value?.drillId;
  useEffect(() => {
    loadSentences().then(setSentences, () => setSentences([]));
  }, []);
  useEffect(() => {
    if (ready && sentences && sentences.length > 0) {
      ensureDictation({ lexicon: ready.lexicon, screen: ready.screen, sentences });
    }
  }, [ready, sentences, words]);
  useEffect(() => {
    if (words && drillId) setDictated(words.map(({ text }) => text));
  }, [words, drillId]);
}
