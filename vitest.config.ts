import { availableParallelism } from 'node:os';
import { defineConfig, type ViteUserConfig } from 'vitest/config';

/** Tests that count steps (test/steps.ts): the fewer modules there are beside what they count, the faster. */
const counting: readonly string[] = [
  'core/story/next-steps.test.ts',
  'ordering/compute-steps.test.ts',
  'test/growth.test.ts',
  'test/hostile/hostile.test.ts',
];

/** What holds for all of them. */
export const each = {
  setupFiles: ['test/property-seed.ts'],
  testTimeout: 300_000,
  hookTimeout: 300_000,
};
const nowhere = ['**/node_modules/**', '**/dist/**', 'test/fixtures/**'];

/** The unit tests without those files. */
export function unitTests(without: readonly string[] = []): ViteUserConfig {
  const leftOut = new Set(without);
  return defineConfig({
    test: {
      maxWorkers: availableParallelism(),
      projects: [
        {
          test: {
            ...each,
            name: 'unit',
            include: ['**/*.test.{ts,tsx}'],
            exclude: [...nowhere, ...counting, ...without],
            isolate: false,
          },
        },
        {
          test: {
            ...each,
            name: 'counting',
            include: counting.filter((file) => !leftOut.has(file)),
            isolate: true,
          },
        },
      ],
    },
  });
}

/**
 * Unit tests: beside their source, in plain Node. The browser journeys have a config of their own. Files
 * run by one worker share its modules, so that the word list is read once and not two hundred times; a
 * test that changes what a module holds puts it back. Those that count steps are alone: the engine counts
 * in all modules that are there, and runs all of them slower from then on. The time limits only end what
 * hangs: a machine that does other work may be several times slower.
 */
export default unitTests();
