import { useEffect, useRef } from 'preact/hooks';
import type { Tool } from './marking.ts';
import { toolByKey } from './tools.tsx';

/**
 * The keys of the tools: each does what its button does, wherever the focus is. It says what the next
 * tap, or Enter on a card, means; none of them marks or ends anything by itself. Z takes the last mark back.
 */
export function useToolKeys(onTool: (tool: Tool) => void, onUndo: () => void): void {
  const now = useRef({ onTool, onUndo });
  now.current = { onTool, onUndo };
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
      const { target } = event;
      if (target instanceof Element && target.closest('[popover], dialog, input, textarea')) return;
      const tool = toolByKey(event.key);
      if (tool) now.current.onTool(tool);
      else if (event.key.toUpperCase() === 'Z') now.current.onUndo();
      else return;
      event.preventDefault();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);
}
