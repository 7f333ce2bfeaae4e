import { say } from './wording.ts';
/** A sheet to collect marks on, printed: the words across, the children down, room to write. */
export function CollectingSheet({
  title,
  words,
  names,
}: {
  readonly title: string;
  readonly words: readonly string[];
  readonly names: readonly string[];
}) {
  return (
    <section class="collecting" aria-hidden="true">
      <h2>{say.collectingSheet.spellingPapers(title)}</h2>
      <table>
        <thead>
          <tr>
            <td />
            {words.map((word) => (
              <th key={word}>{word}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {names.map((name) => (
            <tr key={name}>
              <th>{name}</th>
              {words.map((word) => (
                <td key={word} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
