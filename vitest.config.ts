import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/**
 * Unit tests: beside their source, in plain Node. The browser journeys have a config of their own. Files
 * run by one worker share its modules, so that the word list is read once and not two hundred times; a
 * test that changes what a module holds puts it back. The time limits only end what hangs: a machine that
 * does other work may be several times slower.
 */
export default defineConfig({
  test: {
    include: ['**/*.test.{ts,tsx}'],
    setupFiles: ['test/property-seed.ts'],
    isolate: false,
    maxWorkers: availableParallelism(),
    testTimeout: 300_000,
    hookTimeout: 300_000,
    exclude: ['**/node_modules/**', '**/dist/**', 'test/fixtures/**'],
  },
});
