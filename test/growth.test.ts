import { describe, expect, it } from 'vitest';
import { classId, eventId, groupId } from '../core/ids.ts';
import { guessReading } from '../core/language/guess.ts';
import { parseEvidence } from '../core/learners/evidence-csv.ts';
import type { LogEvent } from '../core/log/event.ts';
import { evidenceOf } from '../core/log/evidence.ts';
import { makeLog, parseLog } from '../core/log/log-file.ts';
import { mergeEvents } from '../core/log/merge.ts';
import { parseRoster, tellApart } from '../core/log/parse-roster.ts';
import { applyEvents, replay } from '../core/log/replay.ts';
import { atOnce } from '../core/paced.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { parseItem } from '../core/sequence/item.ts';
import { nearMisses } from '../core/sequence/near-misses.ts';
import { readOrder } from '../core/sequence/plain/read-order.ts';
import { makeVocabulary } from '../core/sequence/plain/vocabulary.ts';
import { makeProgress, taughtOf } from '../core/sequence/progress.ts';
import { parseSequenceCsv } from '../core/sequence/sequence-csv.ts';
import { judgePassage } from '../core/texts/passage.ts';
import { parseNames } from '../core/words/name-sounds.ts';
import { readPage } from '../web/device/log/page.ts';
import { SMALL_DRILL } from './arbitrary-events.ts';
import { builtLexicon } from './built-lexicon.ts';
import { classYear } from './class-year.ts';
import { stepsOfEach } from './steps.ts';

const readTable = (text: string) => atOnce(parseEvidence(text));

/**
 * Twice the input takes at most about twice the time. Steps are counted and no clock is asked; what the engine
 * does in one call is not seen, so texts that lead such a call astray stand here as well, read whole.
 */
const lexicon = builtLexicon;
const taught = taughtOf(makeProgress(SEQUENCE, 40));

interface Law {
  readonly name: string;
  readonly size: number;
  readonly make: (size: number) => () => unknown;
}

/** Work on a text that is a piece, again and again. */
const onText =
  (piece: (place: number) => string, work: (text: string) => unknown) => (size: number) => {
    const text = Array.from({ length: size }, (_, place) => piece(place)).join('');
    return () => work(text);
  };

const roster = (text: string) => tellApart(parseRoster(text).entries, []);
const order = (text: string) => parseSequenceCsv(text);
const vocabulary = makeVocabulary(lexicon);
const inHerWords = (text: string) => readOrder(text, { vocabulary });
const passage = (text: string) => judgePassage(text, taught, lexicon, SEQUENCE);

const COLUMNS = 'date,pupil,cards,outcome';
const read = (place: number) => `2026-03-02,p${place},c a t,right`;

const laws: readonly Law[] = [
  { name: 'a list of names', size: 800, make: onText((n) => `Wren${n}\n`, roster) },
  { name: 'a list of one name', size: 800, make: onText(() => 'Wren Ash\n', roster) },
  { name: 'one line of names', size: 800, make: onText((n) => `Wren${n},`, roster) },
  { name: 'quotes that never close', size: 800, make: onText(() => 'a","', roster) },
  { name: 'lines with such quotes', size: 800, make: onText(() => 'a","\n', roster) },
  { name: 'lines that open a quote', size: 800, make: onText(() => '"a,b\n', order) },
  { name: 'names typed', size: 800, make: onText(() => 'Wren, Tam\n', parseNames) },
  { name: 'an order', size: 400, make: onText(() => 'm a s sh ea=EH\n', order) },
  { name: 'an order on one line', size: 800, make: onText(() => 'm sh word:said ', order) },
  { name: 'a story for an order', size: 400, make: onText((n) => `once upon${n} a tyme\n`, order) },
  { name: 'a story on one line', size: 800, make: onText((n) => `wint${n % 9}r `, order) },
  { name: 'one step on many lines', size: 400, make: onText((n) => `1,word:a${n}\n`, order) },
  { name: 'her words', size: 400, make: onText((n) => `soft c, th${n}\n`, inHerWords) },
  { name: 'her words on one line', size: 200, make: onText((n) => `wint${n % 9}r `, inHerWords) },
  { name: 'many cells in a line', size: 200, make: onText((n) => `zq${n},`, inHerWords) },
  {
    name: 'one step in many of her lines',
    size: 400,
    make: onText((n) => `1,word:a${n}\n`, inHerWords),
  },
  { name: 'evidence', size: 400, make: onText((n) => `${n ? read(n) : COLUMNS}\n`, readTable) },
  { name: 'one long item', size: 4000, make: onText(() => 'sh', parseItem) },
  { name: 'near misses', size: 4000, make: onText(() => 'e', nearMisses) },
  { name: 'near misses of a sound', size: 4000, make: onText(() => 'sh=', nearMisses) },
  { name: 'a passage', size: 800, make: onText((n) => `The wind${n} blew. `, passage) },
  { name: 'a word without an end', size: 4000, make: onText(() => 'ab', passage) },
  { name: 'a guess', size: 4000, make: onText(() => 'ab', guessReading) },
  { name: 'a number without an end', size: 4000, make: onText(() => '1,', passage) },
  {
    name: 'a backup read',
    size: 800,
    make: (size) => ofYear(size, (year) => parseLog(makeLog(year))),
  },
  { name: 'a backup cut off', size: 800, make: onText(() => '{"id":"', parseLog) },
  { name: 'deep JSON in a backup', size: 4000, make: onText(() => '[', parseLog) },
  {
    name: 'a page of deep JSON',
    size: 4000,
    make: onText(
      () => '[',
      (text) => readPage(classId('room'), text),
    ),
  },
  {
    name: 'two logs merged',
    size: 800,
    make: (size) => ofYear(size, (year) => mergeEvents(year, year)),
  },
  {
    name: 'a class replayed',
    size: 800,
    make: (size) => ofYear(size, (year) => replay(classId('room'), year)),
  },
  {
    name: 'a file brought into an open class',
    size: 800,
    make: (size) =>
      ofYear(size, (year) => applyEvents(replay(classId('room'), year.slice(0, 99)), year)),
  },
  { name: 'marks on one word', size: 400, make: marksOnOneWord },
];

describe('twice the input takes about twice the steps', () => {
  it.each(laws)('$name', ({ size, make }) => {
    const [once, twice] = [make(size), make(2 * size)];
    const [few = 0, many = 0] = stepsOfEach([once, twice]);
    expect(few).toBeGreaterThan(0);
    expect(many).toBeLessThan(2.4 * few + 2000);
  });
});

describe('what leads a search astray is read all the same', () => {
  const long = 300_000;
  it.each([
    ['spaces', ' '.repeat(long)],
    ['dashes', `${'-'.repeat(long)}a`],
    ['one letter', 'a'.repeat(long)],
    ['quotes', '"'.repeat(long + 1)],
    ['open quotes', '"a\n'.repeat(long / 3)],
    ['signs', '='.repeat(long)],
    ['spaces and signs', ' ='.repeat(long / 2)],
    ['apostrophes', "a'".repeat(long / 2)],
    ['many cells', 'a,'.repeat(long / 2)],
    ['points', '1.'.repeat(long / 2)],
    ['NUL', '\0'.repeat(long)],
    ['brackets', '{"a":['.repeat(long / 6)],
  ])('%s', (_, text) => {
    for (const work of [
      roster,
      order,
      inHerWords,
      passage,
      readTable,
      parseNames,
      parseItem,
      nearMisses,
      guessReading,
    ]) {
      expect(() => work(text)).not.toThrow();
    }
    expect(() => parseLog(text)).not.toThrow();
    expect(readPage(classId('room'), text)).toMatchObject({ events: [] });
  });
});

/** Work on a class of so many events. */
function ofYear(size: number, work: (events: readonly LogEvent[]) => unknown): () => unknown {
  const year = classYear(classId('room'), size);
  return () => work(year);
}

/** A drill whose first word is shown and marked over and over, its plan changed now and then. */
function marksOnOneWord(size: number): () => unknown {
  const event = (n: number, kind: string, body: object): LogEvent => ({
    id: eventId(`e${n}`),
    classId: classId('room'),
    at: n + 1,
    by: 'desk',
    kind,
    body: { drillId: 'd', ...body },
  });
  const moment = { part: 'blending', place: 0 };
  const said = { cards: ['m=M'], broke: 1, heard: null, child: null };
  const events = [
    event(0, 'begun', { groupId: groupId('g'), day: '2026-03-02', drill: SMALL_DRILL }),
    ...Array.from({ length: size }, (_, n) => {
      if (n % 100 === 99) return event(n + 1, 'replanned', { drill: SMALL_DRILL });
      return n % 3 === 2
        ? event(n + 1, 'amended', { mark: `e${n}`, field: 'broke', value: null })
        : event(n + 1, n % 3 === 0 ? 'shown' : 'marked', { ...moment, ...said });
    }),
  ];
  return () => {
    for (const record of replay(classId('room'), events).drills.values()) evidenceOf(record);
  };
}
