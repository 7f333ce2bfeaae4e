import type { Drill } from '../../../core/drills/drill.ts';
import { PARTS, type Part } from '../../../core/log/event.ts';
import { placeKey } from '../../../core/warm-up/came-through.ts';
import { isSightMoment, type Moment, momentsOf } from '../../../core/warm-up/moments.ts';
import { counted } from '../../wording/counted.ts';
import { dayView, usual } from './day-view.ts';
import { say } from './wording.ts';

const names: Readonly<Record<Part, readonly [title: string, thing: string]>> = {
  visual: [say.partHead.visualDrill, say.partHead.card],
  auditory: [say.partHead.auditoryDrill, say.partHead.sound],
  blending: [say.partHead.blendingDrill, say.partHead.flip],
};

/** The head of a part: its number or a check once it is done, how much it holds, and how long it usually takes. */
export function PartHead({ part, drill }: { readonly part: Part; readonly drill: Drill }) {
  const [title, thing] = names[part];
  const all = momentsOf(drill).filter((moment) => moment.part === part);
  const { came, kind } = dayView.value;
  const isRead = all.every(({ place }) => came.get(placeKey(part, place))?.state === 'read');
  const isDone = all.length > 0 && (kind === 'done' || isRead);
  const seconds = usual.value.get(part);
  return (
    <div class="part-head">
      <h2 id={`part-${part}`}>
        {isDone ? (
          <span class="ordinal part-done" role="img" aria-label={say.partHead.done}>
            <svg viewBox="0 0 20 20" aria-hidden="true">
              <path d="M4 11l4 4 8-9" fill="none" stroke="currentColor" stroke-width="2.6" />
            </svg>
          </span>
        ) : (
          <span class="ordinal">{PARTS.indexOf(part) + 1}</span>
        )}{' '}
        {title}
      </h2>
      <p class="quiet part-size">
        {sizeSaid(drill, all, thing)}
        {seconds !== undefined && all.length > 0 && (
          <>
            {' · '}
            <b title={say.partHead.asYourLastWarm}>{lengthSaid(seconds * all.length)}</b>
          </>
        )}
      </p>
    </div>
  );
}

function sizeSaid({ run }: Drill, all: readonly Moment[], thing: string): string {
  const words = all.filter(isSightMoment);
  const those = counted(all.length - words.length, thing);
  if (words.length > 0) return say.partHead.wordsBySight(those, words.length);
  if (all[0]?.part !== 'blending') return those;
  return say.partHead.real(those, run.filter(({ kind }) => kind === 'real').length);
}

function lengthSaid(seconds: number): string {
  return seconds < 50
    ? say.partHead.sec(Math.max(5, Math.round(seconds / 5) * 5))
    : say.partHead.min(Math.round(seconds / 60));
}
