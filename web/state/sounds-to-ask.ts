import { computed } from '@preact/signals';
import { soundsTaught } from '../../core/drills/auditory.ts';
import { commonnessIn } from '../../core/drills/commonness.ts';
import type { AuditorySound } from '../../core/drills/drill.ts';
import { readyEngine } from './engine-ready.ts';
import { taught } from './progress.ts';

/** Every sound that can be asked for, with its taught spellings; none until the word list is here. */
export const soundsToAsk = computed<readonly AuditorySound[]>(() => {
  const ready = readyEngine();
  return ready ? soundsTaught(taught.value.correspondences, commonnessIn(ready.lexicon)) : [];
});
