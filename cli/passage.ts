import { SEQUENCE } from '../core/sequence/built-in.ts';
import { type Because, judgePassage, type Passage, stepForShare } from '../core/texts/passage.ts';
import { loadHere, readTaught, readTextFile } from './engine.ts';
import { fail } from './failure.ts';
import { readOptions } from './options.ts';

/** `passage FILE --taught T`: how much of a text can be read, and what stands in the way. */
export function passage(args: readonly string[]): string {
  const typed = readOptions(args, { taught: 'text', accent: 'text' });
  const [file, ...more] = typed.words;
  if (file === undefined || more.length > 0) {
    return fail('Name one text file: sweepline passage story.txt --taught step:24');
  }
  const here = loadHere(typed);
  const { lexicon } = here;
  const taught = readTaught(typed.text('taught'), here);
  const judged = judgePassage(readTextFile(file), taught, lexicon, SEQUENCE);
  return typed.flag('json') ? JSON.stringify(passageJson(judged)) : passageText(judged);
}

function passageJson(judged: Passage) {
  const { words, distinct, decodable, share, irregular, blocked, unknown, shareByStep } = judged;
  return {
    words,
    distinct,
    decodable,
    share,
    irregular,
    blocked: blocked.map(({ word, count, because, step }) => ({
      word,
      count,
      because: because.map(makeBecause),
      step,
    })),
    readAs: readOtherwise(judged),
    unknown: unknown.map(({ word }) => word),
    shareByStep,
    stepFor95: stepForShare(judged, 0.95),
    stepFor98: stepForShare(judged, 0.98),
  };
}

/** Words that can be read although their cards alone do not say why: how they are read. */
function readOtherwise({ judged }: Passage) {
  return [...judged.values()].flatMap(({ word, read }) => {
    if (read?.kind === 'form') return [{ word, as: 'form', of: [read.of], ending: read.ending }];
    if (read?.kind === 'compound') return [{ word, as: 'compound', of: read.parts }];
    return read?.kind === 'flexed' ? [{ word, as: 'flexed' }] : [];
  });
}

function passageText(judged: Passage): string {
  const { words, decodable, share, blocked } = judged;
  const step95 = stepForShare(judged, 0.95);
  return [
    `${decodable} of ${words} words can be read (${(share * 100).toFixed(1)}%).`,
    step95 === null ? 'No step makes it 95%.' : `Step ${step95} makes it 95%.`,
    ...blocked.map(
      ({ word, count, because }) => `  ${word} ×${count}  ${because.map(makeBecause).join(', ')}`,
    ),
  ].join('\n');
}

/** The text form of what stands in the way: `sh=SH`, `habit:schwa`, `irregular:ai=EH`, `irregular:won't`, `unknown`. */
function makeBecause(because: Because): string {
  switch (because.kind) {
    case 'card':
      return because.id;
    case 'habit':
      return `habit:${because.habit}`;
    case 'irregular':
      return `irregular:${because.id}`;
    case 'irregular-word':
      return `irregular:${because.word}`;
    case 'unknown':
      return 'unknown';
  }
}
