import { readFileSync } from 'node:fs';
import { screenLine } from '../core/words/screen-line.ts';
import { loadHere } from './engine.ts';
import { readOptions } from './options.ts';
import { complain } from './shown.ts';

/**
 * `screen < LINES`: one JSON object for each line `cards<TAB>sounds`. A line that
 * cannot be read is reported with its number, and the others are judged.
 */
export function screen(args: readonly string[]): string {
  const { screen: wordScreen } = loadHere(readOptions(args, { accent: 'text' }));
  const answers: string[] = [];
  for (const [index, line] of readFileSync(0, 'utf8').split(/\r?\n/).entries()) {
    if (line.trim() === '') continue;
    const judged = screenLine(wordScreen, line);
    if ('error' in judged) {
      complain(`Line ${index + 1}: ${judged.error.message}`);
      process.exitCode = 2;
    } else {
      answers.push(JSON.stringify(judged));
    }
  }
  return answers.join('\n');
}
