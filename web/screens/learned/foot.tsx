import { computed } from '@preact/signals';
import { setStep, taughtOf } from '../../../core/sequence/progress.ts';
import { engine, readyEngine } from '../../state/engine-ready.ts';
import { progress, taught } from '../../state/progress.ts';
import { linkTo } from '../../state/route.ts';
import { say } from './wording.ts';

/** How many words can be read now, and how many with the next step besides. */
const readable = computed(() => {
  const ready = readyEngine();
  if (!ready) return null;
  const now = ready.countReadable(taught.value);
  const { upTo, sequence } = progress.value;
  if (upTo >= sequence.steps.length) return { now, more: null };
  const next = ready.countReadable(taughtOf(setStep(progress.value, upTo + 1)));
  return { now, more: next - now };
});

/** The foot of the page: what can be read, and the one next step. */
export function Foot() {
  const { upTo } = progress.value;
  return (
    <div class="foot">
      <p aria-live="polite">{upTo === 0 ? say.foot.nothingTaughtYetMove : <Readable />}</p>
      <a class={upTo === 0 ? 'button' : 'button next'} href={linkTo('today')}>
        {say.foot.planTodaysWarmUp}
      </a>
    </div>
  );
}

function Readable() {
  if (engine.value === 'failed') {
    return <span class="quiet">{say.foot.theWordListDid}</span>;
  }
  if (!readable.value) return <span class="quiet">{say.foot.fetchingTheWordList}</span>;
  const { now, more } = readable.value;
  return (
    <>
      {say.foot.canBeReadNow(<b>{counted(now)}</b>)}
      {more === null ? '.' : say.foot.theNextStepOpens(<b>{more.toLocaleString('en-US')}</b>)}
    </>
  );
}

function counted(words: number): string {
  return words === 1 ? say.foot.n1Word : say.foot.words(words.toLocaleString('en-US'));
}
