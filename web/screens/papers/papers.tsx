import './papers.css';
import { everyone } from '../../state/everyone.ts';
import { openPile } from '../../state/papers.ts';
import { linkTo } from '../../state/route.ts';
import { Marking } from './marking.tsx';
import { Setup } from './setup.tsx';

/** Spelling papers: a pile is chosen or begun, then read word by word. */
export function PapersPage() {
  const pile = openPile.value;
  if (everyone.value.length === 0) {
    return (
      <div class="papers-empty">
        <h1>Spelling papers</h1>
        <p>
          Type what your children wrote, and see what each of them hears and which spellings they
          know. Add your children first: first names are enough.
        </p>
        <p>
          <a class="button next" href={linkTo('class')}>
            Add children
          </a>
        </p>
      </div>
    );
  }
  return pile ? <Marking key={pile.id} pile={pile} /> : <Setup />;
}
