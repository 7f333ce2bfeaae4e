import { useState } from 'preact/hooks';
import { afterDrill } from '../../../core/log/after-drill.ts';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { today } from '../../state/day.ts';
import { linkTo } from '../../state/route.ts';
import { dayName } from '../../wording/day-name.ts';
import { makeDrillQuery } from './drill-query.ts';
import { say } from './wording.ts';

/** How many days are listed before she asks for all. */
const few = 5;

/** The group's warm-ups, newest first, each with the way to how it went. */
export function Earlier({
  drills,
  current,
}: {
  readonly drills: readonly DrillRecord[];
  readonly current: string;
}) {
  const [all, setAll] = useState(false);
  const listed = drills.toReversed().slice(0, all ? drills.length : few);
  return (
    <>
      <ul class="earlier" aria-label={say.earlier.warmUpsNewestFirst}>
        {listed.map((record) => (
          <li key={record.id}>
            <a
              href={linkTo('after', makeDrillQuery(record.id))}
              aria-current={record.id === current ? 'page' : undefined}
            >
              <span>
                {record.day === today() ? say.earlier.today : dayName(record.day, today())}
              </span>
              <span class="quiet">{inShort(record)}</span>
            </a>
          </li>
        ))}
      </ul>
      {drills.length > listed.length && (
        <button type="button" class="button plain" onClick={() => setAll(true)}>
          {say.earlier.all(drills.length)}
        </button>
      )}
    </>
  );
}

function inShort(record: DrillRecord): string {
  const { well, broke, mended } = afterDrill(record);
  if (broke.length + mended.length === 0) return say.earlier.allWentWell(well.length);
  return [
    ...(broke.length > 0 ? [say.earlier.broke(broke.length)] : []),
    ...(mended.length > 0 ? [say.earlier.fixedRightAway(mended.length)] : []),
  ].join(', ');
}
