import { useEffect } from 'preact/hooks';
import { type Settings, settings } from '../state/settings.ts';

/** The colors she chose for the classroom, for as long as this screen is shown. */
export function useLook(): void {
  const { look } = settings.value;
  useEffect(() => lookLike(look), [look]);
}

/** Shows everything in these colors from now on. */
export function lookLike(look: Settings['look']): void {
  if (look === 'paper') delete document.documentElement.dataset.look;
  else document.documentElement.dataset.look = look;
}
