import { useEffect } from 'preact/hooks';
import { settings } from '../state/settings.ts';

/** The colors she chose for the classroom, for as long as this screen is shown. */
export function useLook(): void {
  const { look } = settings.value;
  useEffect(() => {
    document.documentElement.dataset.look = look;
    return () => {
      delete document.documentElement.dataset.look;
    };
  }, [look]);
}
