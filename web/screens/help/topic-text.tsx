import { cut, type Topic } from '../../wording/help/topic.ts';

/** The sentences of a topic. */
export function TopicText({ topic: { about, ways } }: { readonly topic: Topic }) {
  return (
    <>
      <p>{about}</p>
      <ul class="help-ways">
        {ways.map((way) => (
          <li key={way}>
            <Said text={way} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** A sentence with the names in it set apart. */
export function Said({ text }: { readonly text: string }) {
  return (
    <>
      {cut(text).map((piece, at) =>
        piece.isName ? <b key={at}>{piece.text}</b> : <span key={at}>{piece.text}</span>,
      )}
    </>
  );
}
