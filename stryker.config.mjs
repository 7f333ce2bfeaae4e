import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Mutation tests: the sources changed in one place at a time, to see whether a test notices. `npm run
 * mutate core/log` says which folder; its tests are those beside it (house/mutate.ts). Words in quotes are
 * left alone, since most are messages, and so is what is worked out when a module loads: the tables, which
 * have tests of their own kind. See docs/testing.md.
 */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'house/mutate.vitest.config.ts', related: false },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  mutator: { excludedMutations: ['StringLiteral'] },
  ignorePatterns: ['/dist', '/bench', '/docs'],
  tempDirName: join(tmpdir(), 'sweepline-mutate'),
  reporters: ['clear-text', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: 'node_modules/.cache/sweepline/mutate.json' },
  timeoutMS: 30_000,
  allowConsoleColors: false,
  disableTypeChecks: false,
};
