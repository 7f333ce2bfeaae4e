import { describe, expect, it } from 'vitest';
import { isInstalled } from './modules.mjs';

const project = { version: '0.1.0' };
const kite = { version: '1.0.0', integrity: 'sha512-a' };

describe('whether the packages are installed as the lockfile says', () => {
  it.each([
    ['all are there', { '': project, 'node_modules/kite': kite }, true],
    ['the project itself moved on', { '': { version: '9.9.9' }, 'node_modules/kite': kite }, true],
    ['more is there than asked', { 'node_modules/kite': kite, 'node_modules/drum': kite }, true],
    ['one is missing', {}, false],
    ['one is another version', { 'node_modules/kite': { ...kite, version: '1.0.1' } }, false],
    ['one has other content', { 'node_modules/kite': { ...kite, integrity: 'sha512-b' } }, false],
  ])('%s', (_, installed, answer) => {
    expect(isInstalled({ '': project, 'node_modules/kite': kite }, installed)).toBe(answer);
  });

  it('an optional one may be absent, but not present in another version', () => {
    const wanted = { 'node_modules/kite': { ...kite, optional: true } };
    expect(isInstalled(wanted, {})).toBe(true);
    expect(isInstalled(wanted, { 'node_modules/kite': { ...kite, version: '2.0.0' } })).toBe(false);
  });
});
