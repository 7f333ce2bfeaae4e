import { describe, expect, it } from 'vitest';
import { readOptions } from './options.ts';

describe('how a server is asked to run', () => {
  it('needs nothing said', () => {
    expect(readOptions([], {})).toEqual({
      port: 8430,
      host: '127.0.0.1',
      data: 'data',
      databaseUrl: null,
      cert: null,
      key: null,
      backup: null,
      schoolKey: null,
      newPass: null,
    });
  });

  it.each([
    [['--port', '0', '--host', '0.0.0.0'], { port: 0, host: '0.0.0.0' }],
    [['--cert', 'c.pem', '--key', 'k.pem'], { cert: 'c.pem', key: 'k.pem' }],
    [['--school-key', 'school.pub'], { schoolKey: 'school.pub' }],
    [['--new-pass', '30', '--backup', 'copies'], { newPass: 30, backup: 'copies' }],
  ])('takes %j', (args, expected) => {
    expect(readOptions(args, {})).toMatchObject(expected);
  });

  it.each([
    [['--porto', '3'], /The server knows --port/],
    [['--port', 'high'], /--port takes a whole number from 0 to 65535/],
    [['--port', '65536'], /--port/],
    [['--cert', 'c.pem'], /belong together/],
    [['--new-pass', '0'], /--new-pass/],
    [['here'], /The server knows/],
  ])('says what is wrong with %j', (args, message) => {
    expect(() => readOptions(args, {})).toThrow(message);
  });

  it('takes the school’s key from outside as well', () => {
    expect(readOptions([], { SCHOOL_KEY: 'school.pub' }).schoolKey).toBe('school.pub');
  });

  it('leaves the copies of PostgreSQL to PostgreSQL', () => {
    const environment = { DATABASE_URL: 'postgres://here/db' };
    expect(readOptions([], environment).databaseUrl).toBe('postgres://here/db');
    expect(() => readOptions(['--backup', 'copies'], environment)).toThrow(/pg_dump/);
  });
});
