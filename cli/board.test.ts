import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { board } from './board.ts';

interface Printed {
  readonly shape: string;
  readonly clean: boolean;
  readonly value: number;
  readonly bound: number;
  readonly optimal: boolean;
  readonly piles: readonly (readonly string[])[];
  readonly words: { readonly real: readonly string[]; readonly nonsense: readonly string[] };
  readonly stopped: number;
  readonly model: {
    readonly cards: readonly (readonly string[])[];
    readonly weights: readonly { readonly cards: readonly string[]; readonly weight: number }[];
    readonly forbidden: readonly (readonly string[])[];
    readonly limits: { readonly begin: number; readonly end: number };
  };
}

function run(...args: string[]): Printed {
  return JSON.parse(board([...args, '--model', '--json'])) as Printed;
}

/** The printed instance as a linear program, from the printed keys alone. */
function programOf({ cards, weights, forbidden, limits }: Printed['model']): string {
  const nameOf = (pile: number, id: string): string => `x${pile}_${cards[pile]?.indexOf(id)}`;
  const rules: string[] = [];
  weights.forEach(({ cards: ids }, at) => {
    ids.forEach((id, pile) => {
      rules.push(`z${at} - ${nameOf(pile, id)} <= 0`);
    });
  });
  for (const ids of forbidden) {
    rules.push(`${ids.map((id, pile) => nameOf(pile, id)).join(' + ')} <= ${ids.length - 1}`);
  }
  const limitOf = [limits.begin, Infinity, limits.end];
  cards.forEach((pile, at) => {
    const most = limitOf[at] as number;
    if (most < pile.length)
      rules.push(`${pile.map((id) => nameOf(at, id)).join(' + ')} <= ${most}`);
  });
  const names = cards.flatMap((pile, at) => pile.map((id) => nameOf(at, id)));
  return [
    'Maximize',
    ` v: ${weights.map(({ weight }, at) => `${weight} z${at}`).join(' + ')}`,
    'Subject To',
    ...rules.map((rule, at) => ` r${at}: ${rule}`),
    'Bounds',
    ...weights.map((_, at) => ` 0 <= z${at} <= 1`),
    'Binary',
    ` ${names.join(' ')}`,
    'End',
  ].join('\n');
}

describe('the board command', () => {
  for (const args of [
    ['--taught', 'step:16', '--shape', 'closed', '--begin', '4', '--end', '4', '--clean'],
    [
      '--taught',
      'a,i,s,t,m,p,n,b,d,ck',
      '--shape',
      'closed',
      '--begin',
      '5',
      '--end',
      '3',
      '--strict',
    ],
    ['--taught', 'a_e,i_e,b,t,k,m,l,r', '--shape', 'silent-e', '--begin', '4', '--end', '3'],
  ]) {
    test(`prints an instance whose optimum is its value: ${args.join(' ')}`, async () => {
      const printed = run(...args);
      const { model, value, bound, optimal, piles, words } = printed;
      const highs = await loadHighs();
      const solved = highs.solve(programOf(model), { output_flag: false });
      expect([value, bound, optimal]).toEqual([Math.round(solved.ObjectiveValue), value, true]);
      const laid = model.weights.filter(({ cards }) =>
        cards.every((id, at) => piles[at]?.includes(id)),
      );
      expect(laid.reduce((sum, { weight }) => sum + weight, 0)).toBe(value);
      expect(words.real.length + words.nonsense.length).toBe(laid.length);
      if (printed.clean) expect(printed.stopped).toBe(0);
    });
  }

  test('a pinned card lies on the board, a banned one does not', () => {
    const { piles } = run(
      '--taught',
      'a,i,s,t,m,p,n,b',
      '--shape',
      'closed',
      '--begin',
      '3',
      '--end',
      '3',
      '--pin',
      'm,b',
      '--ban',
      't',
    );
    expect(piles.flat()).toEqual(expect.arrayContaining(['m=M', 'b=B']));
    expect(piles.flat()).not.toContain('t=T');
  });

  test('what cannot be is said in words', () => {
    expect(() => board(['--taught', 'a,t,s', '--shape', 'cube'])).toThrow('There is no shape');
    expect(() => board(['--taught', 'a,t,s', '--shape', 'closed', '--pin', 'sh'])).toThrow('sh=SH');
    expect(() => board(['--taught', 't,s', '--shape', 'closed'])).toThrow('pile 2');
  });
});
