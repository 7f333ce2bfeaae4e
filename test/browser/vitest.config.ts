import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * Browser journeys: the built app in a real Chromium, as many journey files at a time as there are cores; files run by one worker
 * share its modules.
 */
export default defineConfig({
  test: {
    root: fileURLToPath(new URL('../..', import.meta.url)),
    include: ['test/browser/**/*.journey.ts'],
    setupFiles: ['test/browser/close-browser.ts'],
    isolate: false,
    maxWorkers: availableParallelism(),
    testTimeout: 240_000,
    hookTimeout: 120_000,
    // How long a journey waits for what it polls; on a busy machine a second is not long.
    expect: { poll: { timeout: 30_000 } },
  },
});
