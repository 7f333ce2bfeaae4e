import { signal } from '@preact/signals';
import { useMemo, useRef, useState } from 'preact/hooks';
import { WHOLE_CLASS } from '../../../core/log/class-state.ts';
import { type ParsedRoster, parseRoster, tellApart } from '../../../core/log/parse-roster.ts';
import { childrenOf } from '../../../core/log/roster.ts';
import { classState } from '../../state/open-class.ts';
import { ListPreview } from './list-preview.tsx';
import { addChildren } from './roster-acts.ts';
import { say } from './wording.ts';

/**
 * A class list that was pasted and is not added yet: it stays when she looks at another screen. It may hold
 * more than first names, so it is in this window's memory alone.
 */
const listPasted = signal('');

/** A class list from a file or pasted: read, looked over line by line, and only then added. */
export function BringList() {
  const text = listPasted.value;
  const [isBegun] = useState(text !== '');
  const [column, setColumn] = useState(0);
  const [trouble, setTrouble] = useState('');
  const file = useRef<HTMLInputElement>(null);
  const parsed = useMemo(() => parseRoster(text, column), [text, column]);
  const inClass = childrenOf(classState.value, WHOLE_CLASS).map(({ name }) => name);
  const here = inClass.join('\n');
  const lines = useMemo(() => tellApart(parsed.entries, here.split('\n')), [parsed, here]);

  const isMany = lines.length + parsed.problems.length > MOST_LINES;

  const read = (next: string) => {
    const isLong = next.length > LONGEST;
    setTrouble(isLong ? tooLong : '');
    setColumn(0);
    listPasted.value = isLong ? '' : next;
  };
  const onFile = async () => {
    const chosen = file.current?.files?.[0];
    if (!chosen) return;
    try {
      const content = await chosen.text();
      if (content.startsWith('PK')) setTrouble(zipped);
      else read(content);
    } catch {
      setTrouble(unreadable);
    }
    // So that choosing the same file again is a choice.
    if (file.current) file.current.value = '';
  };

  return (
    <details class="bring-list" open={isBegun}>
      <summary>{say.bringList.bringAClassList}</summary>
      <div class="bring-list-in">
        <p class="quiet small">{say.bringList.aColumn}</p>
        <label>
          {say.bringList.pasteTheListHere}
          <textarea
            rows={4}
            value={text}
            autocomplete="off"
            spellcheck={false}
            onInput={(event) => read(event.currentTarget.value)}
          />
        </label>
        <p>
          <label class="button">
            {say.bringList.chooseAListFile}
            <input
              ref={file}
              class="for-ears"
              type="file"
              accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
              onChange={onFile}
            />
          </label>
        </p>
        {trouble !== '' && (
          <p role="alert" class="class-problem">
            {trouble}
          </p>
        )}
        {parsed.columns.length > 1 && (
          <label class="first-names">
            {say.bringList.firstNamesStandIn}
            <select
              value={column}
              onChange={(event) => setColumn(Number(event.currentTarget.value))}
            >
              {parsed.columns.map((example, at) => (
                <option key={at} value={at}>
                  {say.bringList.column(at + 1, example)}
                </option>
              ))}
            </select>
          </label>
        )}
        {text.trim() !== '' && (
          <>
            <p role="status" class="small">
              {saidOf(parsed)}
            </p>
            {isMany ? (
              <p class="class-problem">{say.bringList.theseAreMoreThan}</p>
            ) : (
              <ListPreview
                key={`${column} ${text}`}
                lines={lines}
                problems={parsed.problems}
                onAdd={(names) => {
                  addChildren(names, null);
                  read('');
                }}
                onCancel={() => read('')}
              />
            )}
          </>
        )}
      </div>
    </details>
  );
}

/** Longer than the list of a whole school, in signs. */
const LONGEST = 300_000;
/** More than a year's children of a school for these grades; each is a line to look over. */
const MOST_LINES = 400;
const tooLong = say.bringList.thisListIsLonger;
const zipped = say.bringList.thisFileIsPacked;
const unreadable = say.bringList.theBrowserCouldNot;

/** What was found, and what was left out and why. */
function saidOf({ format, entries, leftOut, saysRoles }: ParsedRoster): string {
  const { others, deleted } = leftOut;
  const count = (many: number, one: string, more: string) => (many === 1 ? one : `${many} ${more}`);
  return [
    entries.length === 0
      ? say.bringList.noNameWasFound
      : say.bringList.found(count(entries.length, say.bringList.oneChild, say.bringList.children)),
    ...(others > 0
      ? [
          say.bringList.leftOutNotListed(
            count(others, say.bringList.onePerson, say.bringList.people),
          ),
        ]
      : []),
    ...(deleted > 0
      ? [
          say.bringList.leftOutMarked(
            count(deleted, say.bringList.oneChild, say.bringList.children),
          ),
        ]
      : []),
    ...(format === 'oneroster' && !saysRoles ? [say.bringList.thisListDoesNot] : []),
  ].join(' ');
}
