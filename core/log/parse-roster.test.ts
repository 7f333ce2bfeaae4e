import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeCsv } from '../sequence/csv-records.ts';
import { parseRoster, tellApart } from './parse-roster.ts';

const namesIn = (text: string, column?: number) =>
  parseRoster(text, column).entries.map(({ name }) => name);

describe('a pasted list', () => {
  it.each([
    ['Wren\nOdalys\r\nTam', ['Wren', 'Odalys', 'Tam']],
    ['Wren, Odalys, Tam', ['Wren', 'Odalys', 'Tam']],
    ['Name\nWren\nOdalys', ['Wren', 'Odalys']],
    ['Wren Ashdown\nMary-Ann Oyelaran\nTam B', ['Wren', 'Mary-Ann', 'Tam B']],
    ['"Ashdown, Wren"\n"Oyelaran, Odalys Fay"', ['Wren', 'Odalys']],
    ['  Zoë \n\nJosé', ['Zoë', 'José']],
    ['', []],
  ])('%j', (text, names) => {
    expect(namesIn(text)).toEqual(names);
    expect(parseRoster(text).problems).toEqual([]);
  });

  it('says of a line without a name which it is, and keeps the others', () => {
    const { entries, problems } = parseRoster('Wren\n12\n"Odalys\nTam');
    expect(entries.map(({ name }) => name)).toEqual(['Wren', 'Tam']);
    expect(problems).toMatchObject([
      { line: 2, code: 'no-name', text: '12' },
      { line: 3, code: 'open-quote', text: '"Odalys' },
    ]);
  });
});

describe('a table', () => {
  it('has first names under their heading, wherever it stands', () => {
    const text = 'Last Name;First Name;Homeroom\nAshdown;Wren;4\nOyelaran;Odalys Fay;4\n;;4\n';
    const { format, entries, problems } = parseRoster(text);
    expect(format).toBe('table');
    expect(entries).toEqual([
      { line: 2, name: 'Wren', initial: 'A' },
      { line: 3, name: 'Odalys Fay', initial: 'O' },
    ]);
    expect(problems).toMatchObject([{ line: 4, code: 'no-name' }]);
  });

  it('without a heading asks in which column they stand', () => {
    const text = 'Ashdown,Wren Fay\nOyelaran,Odalys\n';
    expect(parseRoster(text).columns).toEqual(['Ashdown', 'Wren Fay']);
    expect(namesIn(text, 1)).toEqual(['Wren', 'Odalys']);
  });

  it('takes the name that a child goes by before the one in the register', () => {
    expect(namesIn('First name,Preferred name\nWilhelmina,Mina\nTariq,\n')).toEqual([
      'Mina',
      'Tariq',
    ]);
  });
});

describe('the users.csv of OneRoster', () => {
  // Columns: 1EdTech OneRoster CSV Binding, users.csv, version 1.1 and version 1.2.1 (2023), as they
  // stand in public sample files. In 1.2 roles moved to a file of their own, roles.csv.
  const columns11 =
    'sourcedId,status,dateLastModified,enabledUser,orgSourcedIds,role,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password';
  const columns12 =
    'sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password,userMasterIdentifier,preferredGivenName,preferredMiddleName,preferredFamilyName,primaryOrgSourcedId,pronouns';

  it('1.1: students only, none that is to be deleted, first names alone', () => {
    const text = [
      columns11,
      'u1,active,,true,s1,student,wa,,Wren,Ashdown,,,,,,,KG,',
      'u2,active,,true,s1,teacher,mo,,Morgan,Oakes,,,m@school.example,,,,,',
      'u3,tobedeleted,,true,s1,student,ol,,Olu,Lark,,,,,,,KG,',
      'u4,,,true,"s1,s2",student,ta,,"Tam, Jr.",Ashdown,,,,,,,KG,',
      'u5,active,,true,s1,student,x,,,,,,,,,,KG,',
      'u6,active,,true,s1,parent,pa,,Pat,Ashdown,,,,,,,,',
    ].join('\r\n');
    const { format, entries, problems, leftOut, saysRoles } = parseRoster(text);
    expect([format, saysRoles]).toEqual(['oneroster', true]);
    expect(entries).toEqual([
      { line: 2, name: 'Wren', initial: 'A' },
      { line: 5, name: 'Tam, Jr.', initial: 'A' },
    ]);
    expect(problems).toMatchObject([{ line: 6, code: 'no-name' }]);
    expect(leftOut).toEqual({ others: 2, deleted: 1 });
  });

  it('1.2: the name that a child goes by; it does not say who is a student', () => {
    const text = `${columns12}\nu1,,,true,wa,,Wilhelmina,Ashdown,,,,,,,KG,,,Mina,,,s1,\nu2,,,true,ta,,Tariq,Lark,,,,,,,KG,,,,,,s1,\n`;
    const { format, entries, saysRoles } = parseRoster(text);
    expect([format, saysRoles]).toEqual(['oneroster', false]);
    expect(entries.map(({ name }) => name)).toEqual(['Mina', 'Tariq']);
  });
});

describe('two of one name', () => {
  const entry = (name: string, initial = '') => ({ line: 1, name, initial });
  const told = (...entries: readonly ReturnType<typeof entry>[]) =>
    tellApart(entries, []).map(({ name }) => name);

  it('get the first letter of their family names, or a number where that does not help', () => {
    expect(told(entry('Tam', 'B'), entry('Wren', 'A'), entry('tam', 'K'))).toEqual([
      'Tam B',
      'Wren',
      'tam K',
    ]);
    expect(told(entry('Tam', 'B'), entry('Tam', 'B'), entry('Tam'))).toEqual([
      'Tam',
      'Tam 2',
      'Tam 3',
    ]);
  });

  it('are never told apart by a name that another has', () => {
    const entries = fc.array(
      fc.record({
        line: fc.constant(1),
        name: fc.constantFrom('Tam', 'tam', 'Tam B', 'Tam 2', 'Wren'),
        initial: fc.constantFrom('', 'B', 'K'),
      }),
    );
    fc.assert(
      fc.property(entries, (all) => {
        const names = tellApart(all, []).map(({ name }) => name.toLowerCase());
        expect(new Set(names).size).toBe(all.length);
      }),
    );
  });

  it('who are in the class are not added again, each counted once', () => {
    const all = [entry('Tam', 'B'), entry('Tam', 'K'), entry('Wren', 'A'), entry('Olu')];
    const there = (...inClass: string[]) => tellApart(all, inClass).map((line) => line.there);
    expect(there('Tam B', 'Tam K', 'wren')).toEqual([true, true, true, false]);
    expect(there('Tam')).toEqual([true, false, false, false]);
  });
});

it('no name of a quoted table is lost, whatever it holds', () => {
  const name = fc.string({ minLength: 1, maxLength: 20 }).map((text) => `x${text.trim()}`);
  fc.assert(
    fc.property(fc.array(name, { maxLength: 8 }), (names) => {
      const text = writeCsv([['First name', 'Room'], ...names.map((one) => [one, '4'])]);
      const { entries, problems } = parseRoster(text);
      expect(problems).toEqual([]);
      expect(entries.map((each) => each.name)).toEqual(
        names.map((one) => one.trim().replace(/\s+/g, ' ').slice(0, 40).trim()),
      );
    }),
  );
});
