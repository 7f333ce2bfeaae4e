import './papers.css';
import { NoChildren } from '../../controls/no-children.tsx';
import { everyone } from '../../state/everyone.ts';
import { openPile } from '../../state/papers.ts';
import { Marking } from './marking.tsx';
import { Setup } from './setup.tsx';
import { say } from './wording.ts';

/** Spelling papers: a pile is chosen or begun, then read word by word. */
export function PapersPage() {
  const pile = openPile.value;
  if (everyone.value.length === 0) {
    return (
      <NoChildren title={say.papers.spellingPapers}>{say.papers.typeWhatYourChildren}</NoChildren>
    );
  }
  return pile ? <Marking key={pile.id} pile={pile} /> : <Setup />;
}
