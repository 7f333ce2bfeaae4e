import type { CheckRecord } from '../../../core/log/class-state.ts';
import { openCheck } from '../../state/check-choice.ts';
import { today } from '../../state/day.ts';
import { scoreOf } from '../../state/scored.ts';
import { kindNames } from '../../wording/check-names.ts';
import { ratesOf } from '../../wording/check-rates.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { say } from './wording.ts';

/** A child's checks, the latest first, each opening to its score. */
export function EarlierChecks({
  checks,
  current,
}: {
  readonly checks: readonly CheckRecord[];
  readonly current: string | null;
}) {
  if (checks.length === 0) {
    return <p class="quiet">{say.earlier.noneYetWhat}</p>;
  }
  return (
    <div class="wide-table">
      <table class="checks-table">
        <thead>
          <tr>
            <th scope="col">{say.earlier.when}</th>
            <th scope="col">{say.earlier.what}</th>
            <th scope="col">{say.earlier.right}</th>
            <th scope="col">{say.earlier.sounds}</th>
            <th scope="col">{say.earlier.aMinute}</th>
          </tr>
        </thead>
        <tbody>
          {checks.toReversed().map((check) => (
            <Row key={check.id} check={check} isCurrent={check.id === current} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Row({ check, isCurrent }: { readonly check: CheckRecord; readonly isCurrent: boolean }) {
  const score = scoreOf(check);
  const { right, asked, soundsRight, soundsAsked } = score;
  return (
    <tr aria-current={isCurrent ? 'true' : undefined}>
      <th scope="row">
        <button type="button" class="button plain" onClick={() => openCheck(check.id)}>
          {whenSaid(check.day, today())}
        </button>
      </th>
      <td>{kindNames[check.form.kind]}</td>
      {check.ended === null ? (
        <td colSpan={3} class="quiet">
          {say.earlier.notFinished}
        </td>
      ) : (
        <>
          <td>{say.earlier.of(right, asked)}</td>
          <td>{say.earlier.ofSounds(soundsRight, soundsAsked)}</td>
          <td>
            {check.ended.seconds === null
              ? say.earlier.noClock
              : (ratesOf(check, score)?.right ?? say.earlier.tooShort)}
          </td>
        </>
      )}
    </tr>
  );
}
