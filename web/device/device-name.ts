/** What a device like this one is commonly called; she may call it otherwise. */
export function guessDeviceName(agent = navigator.userAgent): string {
  return names.find(([sign]) => sign.test(agent))?.[1] ?? 'Laptop';
}

const names: readonly (readonly [sign: RegExp, name: string])[] = [
  [/iPad/, 'iPad'],
  [/iPhone/, 'iPhone'],
  [/Android.*Mobile/, 'Phone'],
  [/Android/, 'Tablet'],
  [/CrOS/, 'Chromebook'],
  [/Macintosh/, 'Mac'],
];
