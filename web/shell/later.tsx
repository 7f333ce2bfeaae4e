import type { ComponentType } from 'preact';
import { useCallback, useEffect, useState } from 'preact/hooks';
import { say } from './wording.ts';

interface LaterProps {
  /** Fetches the screen. The same function each time: a new one fetches again. */
  readonly load: () => Promise<ComponentType>;
}

/** A screen that is fetched when it is first asked for, so that the first page stays small. */
export function Later({ load }: LaterProps) {
  const [screen, setScreen] = useState<{ readonly Page: ComponentType } | 'failed' | undefined>(
    () => {
      const Page = here.get(load);
      return Page && { Page };
    },
  );
  const fetchScreen = useCallback(() => {
    if (!here.has(load)) setScreen(undefined);
    fetched(load).then(
      (Page) => setScreen({ Page }),
      () => setScreen('failed'),
    );
  }, [load]);
  useEffect(fetchScreen, [fetchScreen]);
  if (screen === undefined) return <p class="quiet">{say.later.oneMoment}</p>;
  if (screen !== 'failed') return <screen.Page />;
  return (
    <p>
      {say.later.thisPageDidNot}{' '}
      <button type="button" class="button" onClick={fetchScreen}>
        {say.later.tryAgain}
      </button>{' '}
      <button type="button" class="button" onClick={() => location.reload()}>
        {say.later.reloadForTheNew}
      </button>
    </p>
  );
}

/** The screens that were fetched: shown at once from then on. */
const here = new Map<LaterProps['load'], ComponentType>();

/** Fetches a screen, and remembers it. */
export async function fetched(load: LaterProps['load']): Promise<ComponentType> {
  const Page = await load();
  here.set(load, Page);
  return Page;
}
