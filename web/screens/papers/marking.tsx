import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { ChildId } from '../../../core/ids.ts';
import type { PaperAnswer } from '../../../core/log/event.ts';
import { answerKey, type PapersRecord } from '../../../core/log/papers-record.ts';
import { gridOf, leadsTo } from '../../controls/roving.ts';
import { today } from '../../state/day.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import {
  answerOf,
  byPaper,
  childrenOfPile,
  openPapers,
  sayAnswer,
  sayAnswers,
  setByPaper,
  takeOutPile,
} from '../../state/papers.ts';
import { undoLast } from '../../state/undo.ts';
import { dayName } from '../../wording/day-name.ts';
import { ChangePile } from './change-pile.tsx';
import { CollectingSheet } from './collecting-sheet.tsx';
import { Field } from './field.tsx';
import { type GridSpot, nextSpot } from './next-spot.ts';
import { ReadBack } from './read-back.tsx';
import { Shows } from './shows.tsx';
import { say } from './wording.ts';

/** A pile under way: words across, children down; what is typed is read back at once. */
export function Marking({ pile }: { readonly pile: PapersRecord }) {
  const { words, answers } = pile;
  const children = childrenOfPile(pile);
  const size = { rows: children.length, columns: words.length };
  const [spot, setSpot] = useState<GridSpot>(() => firstUnread(pile, children));
  const [typed, setTyped] = useState<string>();
  const grid = useRef<HTMLDivElement>(null);
  const child = children[spot.row];
  const said = words[spot.column];
  const kept = child && said && answers.get(answerKey(child.id, said.slot));

  useLayoutEffect(() => {
    const field = grid.current?.querySelector<HTMLInputElement>('input');
    field?.focus({ preventScroll: true });
    field?.select();
    field?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [spot]);

  if (!child || !said) return <Nobody />;
  const turnTo = (next: GridSpot) => {
    setTyped(undefined);
    setSpot(next);
  };
  const keep = (answer: PaperAnswer) => sayAnswer(pile, child.id, said, answer);
  const keepTyped = () => {
    const text = typed?.trim() ?? '';
    if (text === '' || (kept?.kind === 'wrote' && kept.text === text)) return;
    keep(answerOf(text, said));
  };
  const onward = () => turnTo(nextSpot(spot, size, byPaper.value));
  const right = () => {
    keep({ kind: 'wrote', text: said.word });
    onward();
  };
  const clear = () => {
    if (kept) keep({ kind: 'unread' });
    setTyped(undefined);
  };
  const away = () => {
    const answer: PaperAnswer = { kind: 'absent' };
    const all = words.map(({ slot }) => ({ child: child.id, slot, answer }));
    const open = all.filter(({ slot }) => !answers.has(answerKey(child.id, slot)));
    sayAnswers(pile, open, say.marking.wasAway(child.name));
    turnTo({ row: Math.min(size.rows - 1, spot.row + 1), column: byPaper.value ? 0 : spot.column });
  };
  /** Inside written letters all keys but up and down are those of the field. */
  const arrowFrom = (key: string, isEmpty: boolean): GridSpot | undefined => {
    if (!isEmpty && !/^Arrow(Up|Down)$/.test(key)) return undefined;
    const grid = gridOf(size.rows, size.columns);
    const to = leadsTo(key, spot.row * size.columns + spot.column, grid);
    return to === null ? undefined : grid[to];
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if ((event.ctrlKey || event.metaKey) && event.key === 'z' && typed === undefined) {
      event.preventDefault();
      undoLast();
      return;
    }
    if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
    const text = typed ?? '';
    const arrow = arrowFrom(event.key, text === '');
    if (arrow) {
      keepTyped();
      turnTo(arrow);
    } else if (event.key === 'Enter') {
      keepTyped();
      onward();
    } else if (event.key === '=' && text === '') right();
    else if (event.key === '-' && text === '') {
      keep({ kind: 'wrote', text: '' });
      onward();
    } else if (event.key === 'F2') away();
    else if (event.key === 'Escape') clear();
    else return;
    event.preventDefault();
  };
  const onPaste = (event: ClipboardEvent) => {
    const lines = (event.clipboardData?.getData('text') ?? '').trimEnd().split(/\r?\n/);
    if (lines.length < 2) return;
    event.preventDefault();
    const pasted = lines.slice(0, size.rows - spot.row).flatMap((line, at) => {
      const other = children[spot.row + at];
      if (!other || line.trim() === '') return [];
      return [{ child: other.id, slot: said.slot, answer: answerOf(line, said) }];
    });
    sayAnswers(pile, pasted, say.marking.pastedAnswers(pasted.length));
    setTyped(undefined);
  };
  const toggleBroken = (card: number) => {
    const before = kept?.kind === 'broke' ? kept.cards : [];
    const cards = before.includes(card)
      ? before.filter((one) => one !== card)
      : [...before, card].sort((one, other) => one - other);
    setTyped(undefined);
    keep(cards.length === 0 ? { kind: 'unread' } : { kind: 'broke', cards });
  };
  const toggleMeant = (card: number) => {
    if (shown.kind !== 'wrote') return;
    const { meant = [], ...written } = shown;
    const next = meant.includes(card) ? meant.filter((one) => one !== card) : [...meant, card];
    setTyped(undefined);
    keep({ ...written, ...(next.length > 0 ? { meant: next } : {}) });
  };
  const shown: PaperAnswer =
    typed !== undefined && typed.trim() !== ''
      ? answerOf(typed, said)
      : (kept ?? { kind: 'unread' });
  const done = children.filter((one) =>
    words.every(({ slot }) => answers.has(answerKey(one.id, slot))),
  ).length;

  return (
    <div class="papers-page">
      <div class="papers-head not-printed">
        <h1>
          {say.marking.spellingPapers} <span class="quiet">{about(pile)}</span>
        </h1>
        <p class="papers-progress">
          <span>
            {say.marking.wordsRead(
              <strong>{say.marking.of(answers.size, size.rows * size.columns)}</strong>,
            )}
          </span>
          <progress
            max={size.rows * size.columns}
            value={answers.size}
            aria-label={say.marking.wordsReadBar}
          />
          <span class="quiet">{say.marking.ofPapersDone(done, size.rows)}</span>
        </p>
      </div>
      <div class="papers-work not-printed">
        {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the field inside. */}
        <div class="papers-grid" ref={grid} onKeyDown={onKeyDown} onPaste={onPaste}>
          <table>
            <thead>
              <tr>
                <td />
                {words.map(({ word, slot }, column) => (
                  <th key={slot} scope="col" class={column === spot.column ? 'at-spot' : undefined}>
                    {word}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {children.map((one, row) => (
                <tr key={one.id} class={row === spot.row ? 'at-spot' : undefined}>
                  <th scope="row" title={one.name}>
                    {one.name}
                  </th>
                  {words.map((word, column) => (
                    <Field
                      key={word.slot}
                      name={`${one.name}, ${word.word}`}
                      said={word}
                      answer={answers.get(answerKey(one.id, word.slot)) ?? null}
                      typed={row === spot.row && column === spot.column ? (typed ?? null) : false}
                      onTurn={() => {
                        keepTyped();
                        turnTo({ row, column });
                      }}
                      onType={setTyped}
                    />
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
        <ReadBack
          title={say.marking.word(child.name, spot.column + 1)}
          said={said}
          answer={shown}
          onBreak={toggleBroken}
          onMeant={toggleMeant}
          onRight={right}
          onClear={clear}
          onNext={() => {
            keepTyped();
            onward();
          }}
        />
      </div>
      <Foot onAway={away} name={child.name} />
      <Shows pile={pile} />
      <ChangePile key={pile.words.map(({ word }) => word).join(' ')} pile={pile} />
      <p class="buttons not-printed">
        <button type="button" class="button" onClick={() => openPapers(null)}>
          {say.marking.leaveItForNow}
        </button>
        <button type="button" class="button" onClick={() => print()}>
          {say.marking.printASheet}
        </button>
        <button type="button" class="button plain" onClick={() => takeOutPile(pile)}>
          {say.marking.takeThesePapersOut}
        </button>
      </p>
      <CollectingSheet
        title={about(pile)}
        words={words.map(({ word }) => word)}
        names={children.map(({ name }) => name)}
      />
    </div>
  );
}

function Foot({ onAway, name }: { readonly onAway: () => void; readonly name: string }) {
  return (
    <div class="papers-foot not-printed">
      <ul class="papers-key">
        <li class="glance glance-right">{say.marking.right}</li>
        <li class="glance glance-heard">{say.marking.heardSpellingNotYet}</li>
        <li class="glance glance-missed">{say.marking.aSoundNotHeard}</li>
      </ul>
      <ul class="papers-key">
        <li>
          <kbd class="key">{say.marking.enter}</kbd>{' '}
          <select
            aria-label={say.marking.whereEnterGoes}
            value={byPaper.value ? 'paper' : 'word'}
            onChange={(event) => setByPaper(event.currentTarget.value === 'paper')}
          >
            <option value="word">{say.marking.nextChild}</option>
            <option value="paper">{say.marking.nextWord}</option>
          </select>
        </li>
        <li>{say.marking.keyRight(<kbd class="key">=</kbd>)}</li>
        <li>{say.marking.leftBlank(<kbd class="key">-</kbd>)}</li>
        <li>{say.marking.cannotBeRead(<kbd class="key">?</kbd>)}</li>
        <li>
          <button type="button" class="button plain" onClick={onAway}>
            {say.marking.keyAway(<kbd class="key">F2</kbd>, name)}
          </button>
        </li>
      </ul>
    </div>
  );
}

function Nobody() {
  return (
    <div class="papers-empty">
      <h1>{say.marking.spellingPapers}</h1>
      <p>{say.marking.nobodyIs}</p>
      <p>
        <button type="button" class="button next" onClick={() => openPapers(null)}>
          {say.marking.toThePiles}
        </button>
      </p>
    </div>
  );
}

function firstUnread(
  { words, answers }: PapersRecord,
  children: readonly { readonly id: ChildId }[],
): GridSpot {
  const byRow = byPaper.peek();
  const [outer, inner] = byRow ? [children.length, words.length] : [words.length, children.length];
  for (let one = 0; one < outer; one++) {
    for (let other = 0; other < inner; other++) {
      const [row, column] = byRow ? [one, other] : [other, one];
      const child = children[row];
      const word = words[column];
      if (child && word && !answers.has(answerKey(child.id, word.slot))) return { row, column };
    }
  }
  return { row: 0, column: 0 };
}

function about({ groupId, day }: PapersRecord): string {
  const group = classState.value.groups.get(groupId);
  const who = group ? nameOfGroup(group, classState.value) : '';
  return day === null ? who : say.marking.written(who, dayName(day, today()));
}
