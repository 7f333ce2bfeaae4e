import { say } from './wording.ts';
/** For paper only: a page of numbered writing lines for each child, as many as there are words and sentences. */
export function WritingSheet({
  words,
  sentences,
}: {
  readonly words: number;
  readonly sentences: number;
}) {
  if (words + sentences === 0) return null;
  return (
    <div class="writing-sheet only-printed">
      <p class="writer">
        <span>{say.writingSheet.name}</span>
        <span class="writer-blank" />
        <span>{say.writingSheet.date}</span>
        <span class="writer-blank short" />
      </p>
      <ol class="word-lines" aria-label={say.writingSheet.linesForWords}>
        {Array.from({ length: words }, (_, place) => (
          <li key={place}>
            <span>{place + 1}</span>
            <span class="lines" />
          </li>
        ))}
      </ol>
      <ol class="sentence-lines" aria-label={say.writingSheet.linesForSentences}>
        {Array.from({ length: sentences }, (_, place) => (
          <li key={place}>
            <span class="line-number">{place + 1}</span>
            <span>
              <span class="lines" />
              <span class="lines" />
            </span>
          </li>
        ))}
      </ol>
    </div>
  );
}
