import './now.css';
import type { Flip } from '../../../core/boards/shapes/board.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { meanings } from '../../state/meanings.ts';
import { moments } from '../../warm-up/running.ts';
import { AtSound } from './at-sound.tsx';
import { AtVisual } from './at-visual.tsx';
import { Before } from './before.tsx';
import { Divided } from './divided.tsx';
import { Heard } from './heard.tsx';
import { TurnSaid } from './turn-said.tsx';
import { say } from './wording.ts';

/** What is up, large: what to say about it, its cards, and what broke. */
export function Now({ now }: { readonly now: Running }) {
  const { standing } = now;
  const moment = momentAt(standing, moments.value);
  if (!moment) return null;
  if (standing.dictating !== null) {
    return (
      <section class="desk-now" aria-label={say.now.now}>
        <AtDictation now={now} />
      </section>
    );
  }
  return (
    <section
      class={`desk-now in-${moment.part}${standing.paused ? ' paused' : ''}`}
      aria-label={say.now.now}
    >
      {standing.paused && <p class="desk-paused">{say.now.theStageIsBlank}</p>}
      {standing.turn !== null ? (
        <TurnSaid moment={moment} standing={standing} />
      ) : moment.part === 'visual' ? (
        <AtVisual id={moment.id} />
      ) : moment.part === 'auditory' ? (
        <AtSound now={now} moment={moment} />
      ) : (
        <AtBlending flip={moment.flip} />
      )}
      <Heard now={now} moment={moment} />
      <Before />
    </section>
  );
}

/** Whether the word is real, and what it means. */
function AtBlending({ flip }: { readonly flip: Flip }) {
  const { word, kind } = flip;
  if (kind === 'nonsense') {
    return (
      <p class="desk-said quiet">
        <Divided flip={flip} />
        {say.now.nonsense}
      </p>
    );
  }
  const meaning = meanings.value?.meaningOf(word);
  return (
    <p class="desk-said">
      <Divided flip={flip} />
      <b>{say.now.realWord}</b>
      {meaning && <span class="quiet"> · {meaning}</span>}
    </p>
  );
}

/** The word to dictate. The children see a writing line and nothing else. */
function AtDictation({ now: { standing, dictated } }: { readonly now: Running }) {
  const word = dictated[standing.dictating ?? 0];
  return (
    <div class="desk-dictation">
      <p class="quiet">{say.now.sayTheWordUse}</p>
      <h2 class="desk-word">{word}</h2>
      <p class="quiet">{say.now.theStageShows}</p>
    </div>
  );
}
