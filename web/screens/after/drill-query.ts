import { type DrillId, drillId } from '../../../core/ids.ts';

/** What the address asks for, to show a certain warm-up. */
export function makeDrillQuery(drill: DrillId): string {
  return new URLSearchParams({ drill }).toString();
}

/** The warm-up that an address asks for; null when it names none. */
export function parseDrillQuery(query: string): DrillId | null {
  const asked = new URLSearchParams(query).get('drill');
  return asked === null ? null : drillId(asked);
}
