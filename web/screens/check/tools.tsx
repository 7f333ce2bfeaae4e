import { TOOLS, type Tool } from './marking.ts';

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
    <fieldset class="check-tools" aria-label="What the next tap says">
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
        Undo
        <kbd class="key">Z</kbd>
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
  wrong: ['Wrong', 'sound'],
  'self-corrected': ['Fixed', 'alone'],
  hesitated: ['Helped', 'after 3 s'],
  'left-out': ['Left out', ''],
  last: ['Last', 'one read'],
};

const keys: Readonly<Record<Tool, string>> = {
  wrong: '',
  'self-corrected': 'C',
  hesitated: 'H',
  'left-out': 'O',
  last: 'L',
};
