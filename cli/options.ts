import { parseArgs } from 'node:util';
import { fail } from './failure.ts';

/** Options a command knows: `text` takes a value, `flag` takes none. */
export type OptionKinds = Readonly<Record<string, 'text' | 'flag'>>;

/** What was typed, checked: unknown options end the command with a kind message. */
export interface Typed {
  readonly words: readonly string[];
  text(name: string): string | null;
  flag(name: string): boolean;
  /** A whole number from `least` to `most`, or `otherwise` when not given. */
  whole(name: string, otherwise: number, least: number, most: number): number;
  /** A number from 0 to 1, or `otherwise`. */
  share(name: string, otherwise: number): number;
}

/** Reads the arguments of one command. `--json` is known to every command; `-o` is short for `--out`. */
export function readOptions(args: readonly string[], kinds: OptionKinds): Typed {
  const parsed = parse(args, kinds);
  const values = new Map(Object.entries(parsed.values));
  const text = (name: string): string | null => {
    const value = values.get(name);
    return typeof value === 'string' ? value : null;
  };
  const number = (name: string, otherwise: number, least: number, most: number): number => {
    const value = text(name);
    if (value === null) return otherwise;
    const read = Number(value);
    if (value.trim() === '' || !(read >= least && read <= most)) {
      fail(`--${name} takes a number from ${least} to ${most}; “${value}” is not one.`);
    }
    return read;
  };
  return {
    words: parsed.positionals,
    text,
    flag: (name) => values.get(name) === true,
    whole: (name, otherwise, least, most) => {
      const read = number(name, otherwise, least, most);
      return Number.isInteger(read) ? read : fail(`--${name} takes a whole number, not ${read}.`);
    },
    share: (name, otherwise) => number(name, otherwise, 0, 1),
  };
}

function parse(args: readonly string[], kinds: OptionKinds) {
  const options: Record<string, { type: 'string' | 'boolean'; short?: string }> = {
    json: { type: 'boolean' },
  };
  for (const [name, kind] of Object.entries(kinds)) {
    const short = name === 'out' ? { short: 'o' } : {};
    options[name] = { type: kind === 'text' ? 'string' : 'boolean', ...short };
  }
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    const known = Object.keys(options).map((name) => `--${name}`);
    return fail(`${(error as Error).message}\nThis command knows ${known.join(', ')}.`);
  }
}
