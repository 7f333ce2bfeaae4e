import type { OutcomeCounts } from '../engine.ts';

/** What stays hidden and why, in general words fit for any eyes. */
const reasons = [
  ['rule', 'would break a spelling rule'],
  ['sound-alike', 'sound like a real word that is spelled otherwise'],
  ['name', 'are first names'],
  ['said-differently', 'are real words, but said in another way'],
  ['screened', 'are not for class'],
  ['untaught', 'have a card that was not taught'],
] as const;

/** What this board says: all its combinations, and what the screen keeps hidden. */
export function Hidden({ counts }: { readonly counts: OutcomeCounts }) {
  const total = Object.values(counts).reduce((sum, count) => sum + count, 0);
  const real = counts.familiar + counts.rare;
  const hidden = total - real - counts.nonsense;
  return (
    <div class="hidden">
      <p class="quiet">
        {counts.screened === 0
          ? `Clean board: all ${total} combinations were heard and none is one to regret. `
          : `All ${total} combinations were heard. `}
        {real} are words, {counts.nonsense} are good nonsense.
      </p>
      {hidden > 0 && (
        <details>
          <summary>{hidden} stay hidden, and why</summary>
          <ul>
            {reasons.map(([outcome, why]) =>
              counts[outcome] === 0 ? null : (
                <li key={outcome}>
                  <b>{counts[outcome]}</b> {why}
                </li>
              ),
            )}
          </ul>
        </details>
      )}
    </div>
  );
}
