import { readFileSync, rmSync } from 'node:fs';
import { relative } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { ensureApp } from './app.mjs';
import { ensureLexicon } from './lexicon.mjs';
import { fromRoot } from './root.mjs';
import { runApart } from './run.mjs';

/**
 * `npm test`: every check there is, and all of them even when one fails. Each reading of the code (types,
 * lint, boundaries, unused) counts as one test; the unit tests and the browser journeys count as many as
 * ran; what must be built first counts only when it fails. At the end stand the tests that failed, by
 * name, and in the last line the true totals.
 *
 * `npm run quick`: the readings and the unit tests that take no longer than it takes to think, for the
 * inner loop.
 *
 * Checks that do not wait for each other run at the same time, in lanes: what a check prints is kept
 * until it ends.
 */
interface Outcome {
  readonly passed: number;
  readonly failed: number;
  readonly output?: string;
  /** The tests that failed, each with the first line of why. */
  readonly failures?: readonly string[];
}

interface Phase {
  readonly name: string;
  readonly check: () => Promise<Outcome>;
}

/** Phases that run one after the other. */
type Lane = readonly Phase[];

const lexicon: Phase = { name: 'word list', check: () => made(ensureLexicon) };
const types: Phase = {
  name: 'types',
  check: () => reading([tool('tsc', '-p', '.'), tool('tsc', '-p', 'core')]),
};
const readings: Lane = [
  { name: 'lint', check: () => reading([tool('biome', 'check', '--error-on-warnings')]) },
  { name: 'boundaries', check: () => reading([tool('tsx', 'house/check-boundaries.ts')]) },
  { name: 'unused code', check: () => reading([tool('knip'), shippedOnly()]) },
];
const unit: Phase = { name: 'unit tests', check: () => tests('unit', []) };
const quickUnit: Phase = {
  name: 'quick unit tests',
  check: () => tests('quick', ['--config', 'house/quick.vitest.config.ts']),
};
const journeys: Lane = [
  { name: 'app', check: () => made(ensureApp) },
  {
    name: 'browser journeys',
    check: () => tests('journeys', ['--config', 'test/browser/vitest.config.ts']),
  },
];

const isQuick = process.argv.includes('quick');
const lanes: readonly Lane[] = isQuick
  ? [[types, ...readings], [quickUnit]]
  : [journeys, [types, ...readings, unit]];

const lines: string[] = [];
const failures: string[] = [];
let passed = 0;
let failed = 0;
await follow([lexicon]);
await Promise.all(lanes.map(follow));
if (failures.length > 0) process.stdout.write(`\n── failed ──\n${failures.join('\n')}\n`);
process.stdout.write(`\n${lines.join('\n')}\n\n${passed} passed, ${failed} failed\n`);
process.exitCode = failed > 0 ? 1 : 0;

async function follow(lane: Lane): Promise<void> {
  for (const { name, check } of lane) {
    const started = performance.now();
    const outcome = await check();
    passed += outcome.passed;
    failed += outcome.failed;
    failures.push(...(outcome.failures ?? []));
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    const word = outcome.failed > 0 ? 'FAILED' : 'ok';
    const line = `${name.padEnd(18)}${word.padEnd(8)}${outcome.passed} passed, ${outcome.failed} failed (${seconds} s)`;
    lines.push(line);
    process.stdout.write(`\n── ${line} ──\n${outcome.output ?? ''}`);
  }
}

/** A command as its program and arguments. */
type Command = readonly [program: string, ...args: string[]];

/** Whether anything is reached by tests alone. */
function shippedOnly(): Command {
  return tool('knip', '-c', 'knip.shipped.jsonc', '--production', '--include', 'files,exports');
}

function tool(name: string, ...args: string[]): Command {
  return [fromRoot('node_modules/.bin', name), ...args];
}

/** Runs all the commands; together they are one test. */
async function reading(commands: readonly Command[]): Promise<Outcome> {
  let failed = 0;
  let output = '';
  for (const [program, ...args] of commands) {
    const ran = await runApart(program, args);
    output += ran.output;
    if (ran.code !== 0) failed = 1;
  }
  return { passed: 1 - failed, failed, output };
}

async function made(ensure: () => Promise<void>): Promise<Outcome> {
  try {
    await ensure();
    return { passed: 0, failed: 0 };
  } catch (error) {
    return { passed: 0, failed: 1, output: `${error instanceof Error ? error.message : error}\n` };
  }
}

/**
 * Runs tests with vitest. A test file that does not load, an error outside any test, and a run
 * without a single test each count as a failure.
 */
async function tests(name: string, args: readonly string[]): Promise<Outcome> {
  const report = fromRoot('node_modules/.cache/sweepline', `${name}.json`);
  rmSync(report, { force: true });
  const [vitest, ...first] = tool('vitest', 'run', '--reporter=default', '--reporter=json');
  const { code, output } = await runApart(vitest, [
    ...first,
    `--outputFile.json=${report}`,
    ...args,
  ]);
  const counts = { ...counted(report), output };
  const wrong = counts.failed === 0 && (code !== 0 || counts.passed === 0);
  return wrong ? { ...counts, failed: 1, failures: said(output) } : counts;
}

/** What vitest printed of what no test stands for: a hook that failed, a worker that ended. */
function said(output: string): readonly string[] {
  const lines = stripVTControlCharacters(output).split('\n');
  const named = lines.filter((line) => /^\s*(FAIL |\w*Error: )/.test(line));
  return named.length > 0
    ? named.slice(0, 20)
    : ['It ended with a failure, and without a word on why.'];
}

/** The totals of vitest's JSON report; none when it wrote no report. */
function counted(report: string): Outcome {
  let text: string;
  try {
    text = readFileSync(report, 'utf8');
  } catch {
    return { passed: 0, failed: 0 };
  }
  const { numPassedTests, testResults } = JSON.parse(text) as Report;
  const failures = testResults.flatMap(({ name, status, message, assertionResults }) => {
    const file = relative(fromRoot(), name);
    if (status === 'failed' && assertionResults.length === 0)
      return `${file}: ${firstLine(message)}`;
    return assertionResults
      .filter((test) => test.status === 'failed')
      .map((test) => `${file}: ${test.fullName}: ${firstLine(test.failureMessages[0])}`);
  });
  return { passed: numPassedTests, failed: failures.length, failures };
}

function firstLine(message = ''): string {
  return message.split('\n', 1)[0] as string;
}

/** What is read of vitest's JSON report, which is in the form of Jest's. */
interface Report {
  readonly numPassedTests: number;
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly message: string;
    readonly assertionResults: readonly {
      readonly status: string;
      readonly fullName: string;
      readonly failureMessages: readonly string[];
    }[];
  }[];
}
