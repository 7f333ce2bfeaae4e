import type { PaperAttempt } from '../../../core/papers/attempts.ts';
import { say } from './wording.ts';

/** A child's attempts over time, in its own letters, the newest first. */
export function Attempts({
  attempts,
}: {
  readonly attempts: readonly { readonly attempt: PaperAttempt; readonly when: string | null }[];
}) {
  const written = attempts.filter(({ attempt }) => attempt.wrote !== null);
  if (written.length === 0) return <p class="quiet small">{say.attempts.nothingWasWrittenOut}</p>;
  return (
    <ul class="papers-attempts">
      {written.map(({ attempt: { said, wrote, slot, read }, when }, at) => (
        <li key={`${slot} ${said.word} ${at}`}>
          {said.word}: <strong>{wrote === '' ? '–' : wrote}</strong>
          {read?.wordRight ? ' ✓' : ''}
          {when && <span class="quiet small"> {when}</span>}
        </li>
      ))}
    </ul>
  );
}
