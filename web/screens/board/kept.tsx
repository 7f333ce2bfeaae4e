import { useEffect, useRef, useState } from 'preact/hooks';
import type { Board } from '../../../core/boards/shapes/board.ts';
import { shapeById } from '../../../core/boards/shapes/shape-list.ts';
import {
  earlierBoards,
  keepBoard,
  keptBoards,
  removeBoard,
  renameBoard,
  replaceBoard,
} from '../../state/boards.ts';
import { lettersOf } from './desk.ts';
import { say } from './wording.ts';

/** A line to write a name on, and what to do with it. */
function NameForm({
  name: before,
  act,
  onName,
}: {
  readonly name: string;
  readonly act: string;
  readonly onName: (name: string) => void;
}) {
  const [name, setName] = useState(before);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.select(), []);
  return (
    <form
      class="name-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() !== '') onName(name);
      }}
    >
      <label>
        {say.kept.name}{' '}
        <input
          ref={field}
          type="text"
          value={name}
          maxLength={60}
          autocomplete="off"
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="button" disabled={name.trim() === ''}>
        {act}
      </button>
    </form>
  );
}

/** Keeps the board on the table under a name. */
export function Keep({ board, onDone }: { readonly board: Board; readonly onDone: () => void }) {
  return (
    <NameForm
      name={shapeById.get(board.shape)?.title ?? say.kept.board}
      act={say.kept.keep}
      onName={(name) => {
        keepBoard(name, board);
        onDone();
      }}
    />
  );
}

/** Her boards of the group: to open, rename and remove; and those that others took the place of. */
export function KeptBoards({ onDone }: { readonly onDone: () => void }) {
  const [renamed, setRenamed] = useState<string>();
  const kept = keptBoards.value;
  const earlier = earlierBoards.value;
  return (
    <>
      {kept.length > 0 && (
        <section class="kept-boards">
          <h3>{say.kept.yourBoards}</h3>
          <ul>
            {kept.map(({ name, board, isForAll }) => (
              <li key={name}>
                <div>
                  <b>{name}</b>
                  <p class="quiet small">
                    {isForAll && say.kept.inEveryGroup}
                    {boardInWords(board)}
                  </p>
                </div>
                <p class="kept-acts">
                  <button
                    type="button"
                    class="button"
                    aria-label={say.kept.open(name)}
                    onClick={() => {
                      replaceBoard(board, say.kept.opened(name));
                      onDone();
                    }}
                  >
                    {say.kept.openAlone}
                  </button>
                  <button
                    type="button"
                    class="button plain"
                    aria-label={say.kept.rename(name)}
                    aria-expanded={renamed === name}
                    onClick={() => setRenamed(renamed === name ? undefined : name)}
                  >
                    {say.kept.renameAlone}
                  </button>
                  <button
                    type="button"
                    class="button plain"
                    aria-label={say.kept.remove(name)}
                    onClick={() => removeBoard(name)}
                  >
                    {say.kept.removeAlone}
                  </button>
                </p>
                {renamed === name && (
                  <NameForm
                    name={name}
                    act={say.kept.renameAlone}
                    onName={(next) => {
                      renameBoard(name, next);
                      setRenamed(undefined);
                    }}
                  />
                )}
              </li>
            ))}
          </ul>
        </section>
      )}
      {earlier.length > 0 && (
        <section class="kept-boards">
          <h3>{say.kept.earlierBoards}</h3>
          <ul>
            {earlier.map((board) => (
              <li key={JSON.stringify(board)}>
                <p class="small">{boardInWords(board)}</p>
                <button
                  type="button"
                  class="button"
                  onClick={() => {
                    replaceBoard(board, say.kept.laidTheEarlierBoard);
                    onDone();
                  }}
                >
                  {say.kept.layItAgain}
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

/** A board as short as it can be told: its shape and its cards. */
function boardInWords({ shape, piles }: Board): string {
  const cards = piles.map((pile) => pile.map(lettersOf).join(' ') || '–').join(' | ');
  return `${shapeById.get(shape)?.title ?? shape}: ${cards}`;
}
