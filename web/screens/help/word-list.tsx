import { type GlossaryWord, meaningOf } from '../../wording/help/glossary.ts';
import { say } from './wording.ts';

/** Words with what each means. */
export function WordList({ words }: { readonly words: readonly GlossaryWord[] }) {
  return (
    <dl class="help-words">
      {words.map((word) => (
        <div key={word}>
          <dt>
            {word}
            {meaningOf(word).ours && (
              <span class="quiet small help-ours"> {say.wordList.ourWord}</span>
            )}
          </dt>
          <dd>{meaningOf(word).means}</dd>
        </div>
      ))}
    </dl>
  );
}
