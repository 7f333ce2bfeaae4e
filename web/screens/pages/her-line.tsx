import { useEffect } from 'preact/hooks';
import type { ChildId, GroupId } from '../../../core/ids.ts';
import { lineKey } from '../../../core/log/class-state.ts';
import type { EventSpec, PAGES } from '../../../core/log/event.ts';
import { lineDrafts as typed } from '../../state/leftovers.ts';
import { classState, recordForGood } from '../../state/open-class.ts';
import { say } from './wording.ts';

/** How long she pauses, in milliseconds, before what she wrote goes into the log. */
const PAUSE = 1000;

interface HerLineProps {
  readonly page: (typeof PAGES)[number];
  /** The id of the child or group. */
  readonly about: ChildId | GroupId;
  readonly placeholder: string;
}

/**
 * A line of her own on a page: written on the screen, printed as it stands. What she types is on this device's
 * shelf at once, and goes into the log when she pauses or leaves; what is found on the shelf later goes into
 * the log then.
 */
export function HerLine({ page, about, placeholder }: HerLineProps) {
  const classId = classState.value.id;
  const key = `${classId} ${lineKey({ page, about })}`;
  const inLog = classState.value.lines.get(lineKey({ page, about })) ?? '';
  const text = typed.value[key] ?? inLog;

  const keep = async () => {
    const now = typed.peek()[key];
    if (now === undefined) return;
    const wrote: EventSpec = { kind: 'wrote', body: { page, about, text: now } };
    const isKept = now === inLog || (await recordForGood(wrote));
    if (!isKept || typed.peek()[key] !== now) return;
    const { [key]: _, ...others } = typed.peek();
    typed.value = others;
  };

  useEffect(() => {
    if (typed.value[key] === undefined) return;
    const timer = setTimeout(() => void keep(), PAUSE);
    return () => clearTimeout(timer);
  });

  return (
    <div class="her-line">
      <label class="not-printed">
        {say.herLine.aLine}
        <textarea
          rows={2}
          value={text}
          placeholder={placeholder}
          onInput={(event) => {
            typed.value = { ...typed.peek(), [key]: event.currentTarget.value };
          }}
          onBlur={() => void keep()}
        />
      </label>
      {text.trim() !== '' && <p class="her-words only-printed">{text}</p>}
    </div>
  );
}
