import type { PaperAttempt } from '../../../core/papers/attempts.ts';
import { type CardShown, cardsShown } from '../../../core/papers/spelling-shown.ts';
import { SoundedCard } from '../../controls/sounded-card.tsx';
import { shareSaid } from './share-said.ts';
import { say } from './wording.ts';

/** Of each sound, how often it was heard, and of those how often it was spelled as the word has it. */
export function SoundBySound({ attempts }: { readonly attempts: readonly PaperAttempt[] }) {
  const cards = [...cardsShown(attempts)].sort((one, other) => missed(other) - missed(one));
  if (cards.length === 0) return null;
  return (
    <table class="sound-by-sound">
      <thead>
        <tr>
          <th scope="col">{say.soundBySound.sound}</th>
          <th scope="col">{say.soundBySound.heard}</th>
          <th scope="col">{say.soundBySound.spelledAsTheWord}</th>
        </tr>
      </thead>
      <tbody>
        {cards.map(({ id, hears, knows }) => (
          <tr key={id}>
            <th scope="row">
              <SoundedCard id={id} />
            </th>
            <td>{shareSaid(hears)}</td>
            <td>{shareSaid(knows)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** How often a sound was not heard or not spelled, so that what needs work comes first. */
function missed({ hears, knows }: CardShown): number {
  return hears.of - hears.times + knows.of - knows.times;
}
