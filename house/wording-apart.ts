import ts from 'typescript';

/** Attributes that a person sees or hears. */
const HEARD = new Set(['title', 'aria-label', 'placeholder', 'alt', 'label', 'aria-valuetext']);

/** A letter that belongs to a word: what is only a sign or a number says the same in every language. */
const WORD = /\p{L}{2}/u;

/**
 * Where a source file of a screen says something itself: text between tags, or an attribute that is seen or
 * heard. What a screen says stands in `wording.ts` beside it, where all of it can be read together and
 * translated. One line for each fault; the texts that are passed on as values are not seen by this check.
 */
export function wordsInMarkup(path: string, text: string): readonly string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const faults: string[] = [];
  const see = (node: ts.Node): void => {
    const said = saidBy(node);
    if (said !== null && WORD.test(said)) {
      const { line } = file.getLineAndCharacterOfPosition(node.getEnd());
      faults.push(`${path}:${line + 1} says “${said.trim().replace(/\s+/g, ' ')}” itself`);
    }
    node.forEachChild(see);
  };
  see(file);
  return faults;
}

function saidBy(node: ts.Node): string | null {
  if (ts.isJsxText(node)) return node.text;
  if (!ts.isJsxAttribute(node) || !HEARD.has(node.name.getText())) return null;
  const value = node.initializer;
  if (value && ts.isStringLiteral(value)) return value.text;
  return null;
}
