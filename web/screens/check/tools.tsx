import { TOOLS, type Tool } from './marking.ts';
import { say } from './wording.ts';

/** What the next tap says. */
export function Tools({
  now,
  onTool,
  onUndo,
}: {
  readonly now: Tool;
  readonly onTool: (tool: Tool) => void;
  /** Takes the last mark back; null when there is none. */
  readonly onUndo: (() => void) | null;
}) {
  return (
    <fieldset class="check-tools" aria-label={say.tools.whatTheNextTap}>
      {TOOLS.map((tool) => (
        <button
          key={tool}
          type="button"
          class="check-tool"
          aria-pressed={tool === now}
          onClick={() => onTool(tool)}
        >
          <span>
            {names[tool][0]}
            <span class="tool-more"> {names[tool][1]}</span>
          </span>
          {keys[tool] && <kbd class="key">{keys[tool]}</kbd>}
        </button>
      ))}
      <button
        type="button"
        class="check-tool undo"
        disabled={onUndo === null}
        onClick={() => onUndo?.()}
      >
        {say.tools.undo(<kbd class="key">Z</kbd>)}
      </button>
    </fieldset>
  );
}

/** The tool that a key stands for, as its button does; undefined for any other key. */
export function toolByKey(key: string): Tool | undefined {
  return TOOLS.find((tool) => keys[tool] !== '' && keys[tool] === key.toUpperCase());
}

/** Each in one or two words, and what follows them where there is room. */
const names: Readonly<Record<Tool, readonly [string, string]>> = {
  wrong: [say.tools.wrong, say.tools.sound],
  'self-corrected': [say.tools.fixed, say.tools.alone],
  hesitated: [say.tools.helped, say.tools.after3S],
  'left-out': [say.tools.leftOut, ''],
  last: [say.tools.last, say.tools.oneRead],
};

const keys: Readonly<Record<Tool, string>> = {
  wrong: '',
  'self-corrected': 'C',
  hesitated: 'H',
  'left-out': 'O',
  last: 'L',
};
