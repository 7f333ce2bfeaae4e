import { defineConfig } from 'vitest/config';

/** Unit tests: beside their source, in plain Node. The browser journeys have a config of their own. */
export default defineConfig({
  test: {
    include: ['**/*.test.{ts,tsx}'],
    testTimeout: 20_000,
    exclude: ['**/node_modules/**', '**/dist/**', 'test/fixtures/**'],
  },
});
