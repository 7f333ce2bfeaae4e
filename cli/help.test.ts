import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { fromRoot } from '../house/root.mjs';
import { board } from './board.ts';
import { cards } from './cards.ts';
import { check } from './check.ts';
import { drill } from './drill.ts';
import { HELP, helpFor } from './help.ts';
import { mastery } from './mastery.ts';
import { passage } from './passage.ts';
import { screen } from './screen.ts';
import { sheet } from './sheet.ts';
import { slides } from './slides.ts';
import { spell } from './spell.ts';
import { words } from './words.ts';
import { wrote } from './wrote.ts';

type Command = (args: readonly string[]) => string | Promise<string>;

const commands: Readonly<Record<string, Command>> = {
  board,
  cards,
  check,
  drill,
  mastery,
  passage,
  screen,
  sheet,
  slides,
  spell,
  words,
  wrote,
};

/** What a command says when it is given an option it does not know: all that it does know. */
async function known(name: string): Promise<readonly string[]> {
  const [first = '', ...rest] = name.split(' ');
  const refused = async () => commands[first]?.([...rest, '--not-an-option']);
  const message = await refused().then(String, (error: Error) => error.message);
  return /This command knows (.*)\.$/.exec(message)?.[1]?.split(', ') ?? [];
}

describe('the help of a command', () => {
  it.each([...HELP.keys()])(
    '%s names each option that the command knows, and no other',
    async (name) => {
      const told = HELP.get(name)?.options.flatMap(([option]) => option.match(/--[a-z-]+/g) ?? []);
      expect(told?.toSorted()).toEqual((await known(name)).toSorted());
    },
  );

  it('is there for every command', () => {
    for (const name of Object.keys(commands)) expect([name, helpFor([name])]).not.toContain(null);
  });

  it('is printed by the program', () => {
    const main = fromRoot('cli', 'main.ts');
    const { stdout } = spawnSync(process.execPath, ['--import', 'tsx', main, 'cards', '--help'], {
      encoding: 'utf8',
    });
    expect(stdout).toBe(`${helpFor(['cards'])}\n`);
    expect(stdout).toContain('--paper letter|a4');
  });

  it('of a command of several kinds is that of the kind, or of all', () => {
    expect(helpFor(['sheet', 'home'])).toMatch(/^sheet home /);
    expect(helpFor(['sheet'])?.match(/^sheet /gm)).toHaveLength(6);
    expect(helpFor(['wrods'])).toBeNull();
  });
});
