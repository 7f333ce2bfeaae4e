import { describe, expect, it } from 'vitest';
import { ROLES } from '../../core/sharing/role.ts';
import { asideSaid, ROLE_SAID, refusalSaid } from './sharing-said.ts';

describe('what is said of sharing', () => {
  it('names every right, each otherwise', () => {
    const names = ROLES.map((role) => ROLE_SAID[role].name);
    expect(new Set(names).size).toBe(ROLES.length);
    for (const role of ROLES) expect(ROLE_SAID[role].says).toMatch(/^[A-Z].*\.$/);
  });

  it.each([
    'no-server',
    'pass',
    'spent',
    'removed',
    'gone',
    'full',
    'not-secure',
    'of a newer version',
  ])('says what to do when it is %s, and shows no code', (why) => {
    expect(refusalSaid(why)).toMatch(/^[A-Z].*\.$/);
    expect(refusalSaid(why)).not.toContain(why.includes('-') ? why : '~');
  });

  it('says of what was set aside what was wrong with it', () => {
    expect(asideSaid('not-allowed')).toBe('was not for its device to say');
    expect(asideSaid('of a newer version')).toBe('could not be read here');
  });
});
