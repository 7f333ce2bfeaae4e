import { describe, it } from 'vitest';
import { STORE_LAWS } from '../../../test/event-store-contract.ts';
import { createMemoryStore } from './memory-store.ts';

describe('the memory store', () => {
  for (const { name, check } of STORE_LAWS) {
    it(name, () => check(createMemoryStore()));
  }
});
