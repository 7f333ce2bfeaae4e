import { notNoted } from '../state/my-right.ts';
import { say } from './wording.ts';

/** What was just done is not this device's to note: it says so, and who can say otherwise. */
export function NotNoted() {
  const role = notNoted.value;
  return (
    <div role="status">
      {role && (
        <div class="banner">
          <p>
            {say.notNoted.whoeverSharesTheClass(
              role === 'aide' ? say.notNoted.thisDeviceRuns : say.notNoted.thisDeviceReadsAlong,
            )}
          </p>
          <button
            type="button"
            class="button plain"
            onClick={() => {
              notNoted.value = null;
            }}
          >
            {say.notNoted.gotIt}
          </button>
        </div>
      )}
    </div>
  );
}
