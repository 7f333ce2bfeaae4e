import { computed } from '@preact/signals';
import { twinsIn } from '../../core/language/twins.ts';
import { taught } from './progress.ts';

/** The taught cards whose letters another taught card has too. */
export const twins = computed<ReadonlySet<string>>(() => twinsIn(taught.value.correspondences));
