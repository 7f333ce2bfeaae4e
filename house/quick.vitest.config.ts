import { existsSync } from 'node:fs';
import { unitTests } from '../vitest.config.ts';
import { fromRoot } from './root.mjs';

/**
 * The unit tests for the inner loop: all but the slowest, which take four fifths of the time: they search
 * boards to the end, try every board on every group, make drills by the hundred, print pages, wait for a
 * lock, start servers or try hostile inputs. `npm test` runs them all.
 */
const slow: readonly string[] = [
  'cli/board.test.ts',
  'cli/drill.test.ts',
  'cli/main.test.ts',
  'cli/sheet.test.ts',
  'cli/shown.test.ts',
  'cli/slides.test.ts',
  'core/boards/runs/run.test.ts',
  'core/boards/search/aims.test.ts',
  'core/boards/search/best-board.test.ts',
  'core/boards/search/search-long.test.ts',
  'core/boards/search/search.test.ts',
  'core/boards/search/syllable-piles.test.ts',
  'core/checks/forms.test.ts',
  'core/dictation/dictation.test.ts',
  'core/drills/build-drill.test.ts',
  'core/words/decodable.test.ts',
  'house/take-port.test.ts',
  'lexicon/build-list.test.ts',
  'print/cards/cards-on-paper.test.ts',
  'print/sheets/sheets.test.ts',
  'server/serve.test.ts',
  'test/growth.test.ts',
  'test/hostile/hostile.test.ts',
  'test/nothing-bypasses-on-paper.test.ts',
  'test/nothing-bypasses.test.ts',
  'test/sharing/damaged.test.ts',
  'test/sharing/dump.test.ts',
  'test/sharing/far-class.test.ts',
  'test/sharing/kill.test.ts',
  'test/sharing/wall.test.ts',
  'test/what-is-known.test.ts',
  'web/device/log/faults.test.ts',
  'web/device/log/lock.test.ts',
  'web/device/log/second-copy.test.ts',
];

const gone = slow.filter((file) => !existsSync(fromRoot(file)));
if (gone.length > 0)
  throw new Error(`The quick tests leave out what is not there: ${gone.join(', ')}`);

export default unitTests(slow);
