import './head.css';
import { useEffect, useState } from 'preact/hooks';
import type { Part } from '../../../core/log/event.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { readsAlong } from '../../state/my-right.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { sharing } from '../../state/sharing.ts';
import { openStage } from '../../state/stage-window.ts';
import type { KeyWish } from '../../warm-up/keys.ts';
import { leadIsSilent, takeLead } from '../../warm-up/lead-here.ts';
import { moments, recordNow } from '../../warm-up/running.ts';
import { stageIsAfar, stageIsOpen } from '../../warm-up/windows.ts';
import { say } from './wording.ts';

const partNames: Readonly<Record<Part, string>> = {
  visual: say.head.visualDrill,
  auditory: say.head.auditoryDrill,
  blending: say.head.blendingDrill,
};

/** Who is at work, at what, how far and how long; and the window for the children. */
export function Head({
  now,
  onWish,
}: {
  readonly now: Running;
  readonly onWish: (wish: KeyWish) => void;
}) {
  const { standing, groupId } = now;
  const group = classState.value.groups.get(groupId);
  const moment = momentAt(standing, moments.value);
  const part = standing.dictating === null ? moment && partNames[moment.part] : say.head.dictation;
  return (
    <header class="desk-head">
      <h1>{group ? nameOfGroup(group, classState.value) : say.head.warmUp}</h1>
      <p class="quiet desk-part">{part ?? say.head.theEnd}</p>
      <p class="desk-count">{countSaid(now)}</p>
      <Clock />
      {(now.rehearsed !== null || readsAlong.value) && (
        <p class="desk-pill looking" role="status">
          {say.head.nothingIsNoted(
            now.rehearsed === null ? say.head.readingAlong : say.head.justLooking,
          )}
        </p>
      )}
      {leadIsSilent.value ? <TakeOver /> : <StagePill />}
      <button type="button" class="desk-quiet desk-keys" onClick={() => onWish('keys')}>
        {say.head.keys(<kbd class="key">?</kbd>)}
      </button>
      <button type="button" class="desk-quiet desk-leave" onClick={() => onWish('leave')}>
        {say.head.leave(<kbd class="key">{say.head.esc}</kbd>)}
      </button>
    </header>
  );
}

/** The other device is out of reach: this one goes on by itself, and may lead. */
function TakeOver() {
  return (
    <p class="desk-pill desk-lost" role="status">
      {say.head.theOtherDevice}{' '}
      <button type="button" class="button desk-open" onClick={takeLead}>
        {say.head.takeOverHere}
      </button>
    </p>
  );
}

function StagePill() {
  const [blocked, setBlocked] = useState(false);
  const [wasFollowed, setFollowed] = useState(false);
  const isCut = stageIsAfar.value && sharing.value?.state.isConnected === false;
  useEffect(() => {
    if (stageIsAfar.value) setFollowed(true);
    else if (stageIsOpen.value) setFollowed(false);
  }, [stageIsAfar.value, stageIsOpen.value]);
  if (isCut || (wasFollowed && !stageIsOpen.value)) {
    return (
      <p class="desk-pill desk-lost" role="status">
        {say.head.theWallIsNot}
        {!isCut && (
          <button type="button" class="desk-quiet" onClick={() => setFollowed(false)}>
            {say.head.ok}
          </button>
        )}
      </p>
    );
  }
  if (stageIsOpen.value) {
    return (
      <p class="desk-pill" role="status">
        {say.head.stageOpen}
      </p>
    );
  }
  if (blocked) {
    return (
      <a class="button desk-open" href="#/stage" target="sweepline-stage">
        {say.head.openTheStageHere}
      </a>
    );
  }
  return (
    <button type="button" class="button desk-open" onClick={() => setBlocked(!openStage())}>
      {say.head.openTheStage}
    </button>
  );
}

/** `8 of 30` in this part; empty at the end. */
function countSaid({ standing, dictated }: Running): string {
  if (standing.dictating !== null) return say.head.of(standing.dictating + 1, dictated.length);
  const { order, at } = standing;
  const all = moments.value;
  const part = momentAt(standing, all)?.part;
  if (!part) return '';
  const places = order.flatMap((number, place) => (all[number]?.part === part ? [place] : []));
  return say.head.wordOf(places.indexOf(at) + 1, places.length);
}

/** How long the warm-up has run, in minutes and seconds; it stops at the end. */
function Clock() {
  const [time, setTime] = useState(Date.now);
  useEffect(() => {
    const timer = setInterval(() => setTime(Date.now()), 1000);
    return () => clearInterval(timer);
  }, []);
  const record = recordNow.value;
  const passed = record ? (record.ended?.at ?? time) - record.at : 0;
  return (
    <p class="quiet desk-clock" role="timer" aria-label={say.head.timeSinceItBegan} aria-live="off">
      {timeSaid(passed)}
    </p>
  );
}

function timeSaid(milliseconds: number): string {
  const seconds = Math.max(0, Math.floor(milliseconds / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
