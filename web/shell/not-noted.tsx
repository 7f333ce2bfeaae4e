import { notNoted } from '../state/my-right.ts';

/** What was just done is not this device's to note: it says so, and who can say otherwise. */
export function NotNoted() {
  const role = notNoted.value;
  return (
    <div role="status">
      {role && (
        <div class="banner">
          <p>
            {role === 'aide'
              ? 'This device runs the desk only, so what you just did was not noted. Lists, notes, and checks are changed on her other devices.'
              : 'This device reads along, so what you just did was not noted.'}{' '}
            Whoever shares the class can let it do more.
          </p>
          <button
            type="button"
            class="button plain"
            onClick={() => {
              notNoted.value = null;
            }}
          >
            Got it
          </button>
        </div>
      )}
    </div>
  );
}
