import { describe, expect, it } from 'vitest';
import { guessDeviceName } from './device-name.ts';

describe('what a device is called before she says so', () => {
  // As these browsers name themselves, shortened; from memory.
  it.each([
    ['Mozilla/5.0 (iPhone; CPU iPhone OS 19_0 like Mac OS X)', 'iPhone'],
    ['Mozilla/5.0 (Linux; Android 16; Pixel 9) Chrome/142.0 Mobile Safari/537.36', 'Phone'],
    ['Mozilla/5.0 (Linux; Android 15; Tab) Chrome/142.0 Safari/537.36', 'Tablet'],
    ['Mozilla/5.0 (X11; CrOS x86_64 16000.0.0) Chrome/142.0', 'Chromebook'],
    ['Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)', 'Mac'],
    ['Mozilla/5.0 (Windows NT 10.0; Win64; x64)', 'Laptop'],
  ])('%s', (agent, name) => {
    expect(guessDeviceName(agent)).toBe(name);
  });
});
