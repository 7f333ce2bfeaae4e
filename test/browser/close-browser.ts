import { afterAll } from 'vitest';
import { closeBrowser } from './visit.ts';

afterAll(closeBrowser);
