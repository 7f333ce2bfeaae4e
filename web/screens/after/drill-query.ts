/** What the address asks for, to show a certain warm-up. */
export function makeDrillQuery(drillId: string): string {
  return new URLSearchParams({ drill: drillId }).toString();
}

/** The warm-up that an address asks for; null when it names none. */
export function parseDrillQuery(query: string): string | null {
  return new URLSearchParams(query).get('drill');
}
