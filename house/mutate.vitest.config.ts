import { defineConfig } from 'vitest/config';
import { each } from '../vitest.config.ts';

/** The unit tests of one folder, named by MUTATED (house/mutate.ts), for changed sources to be tried on. */
const folder = process.env.MUTATED ?? 'core';

export default defineConfig({ test: { ...each, include: [`${folder}/**/*.test.ts`] } });
