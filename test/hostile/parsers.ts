import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { deflateSync } from 'fflate';
import { parseBoardLink } from '../../core/boards/shapes/board-link.ts';
import { parseReading } from '../../core/checks/parse-reading.ts';
import { childId, classId, drillId, groupId } from '../../core/ids.ts';
import { parseCardId } from '../../core/language/card-id.ts';
import { guessReading } from '../../core/language/guess.ts';
import { parseSounds } from '../../core/language/phonemes.ts';
import { parsePronunciation } from '../../core/language/pronunciation.ts';
import { parseDay } from '../../core/learners/day.ts';
import { parseEvidence } from '../../core/learners/evidence-csv.ts';
import { parseHeard, readCards } from '../../core/learners/written-cards.ts';
import { findAhead } from '../../core/log/ahead.ts';
import { evidenceOf } from '../../core/log/evidence.ts';
import { isForm } from '../../core/log/is-check-form.ts';
import { isBoard, isDrill } from '../../core/log/is-drill.ts';
import { isGroupPlace, isItem, isSequence } from '../../core/log/is-group-place.ts';
import { makeLog, parseLog } from '../../core/log/log-file.ts';
import { parseEvent } from '../../core/log/parse-event.ts';
import { parseRoster, tellApart } from '../../core/log/parse-roster.ts';
import { applyEvents, replay } from '../../core/log/replay.ts';
import { atOnce } from '../../core/paced.ts';
import { parseWords } from '../../core/papers/said-words.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { parseItem } from '../../core/sequence/item.ts';
import { nearMisses } from '../../core/sequence/near-misses.ts';
import { parseGrade } from '../../core/sequence/parse-grade.ts';
import { makeProgress, taughtOf } from '../../core/sequence/progress.ts';
import { parseSequenceCsv } from '../../core/sequence/sequence-csv.ts';
import { parseTaught, parseTaughtJson } from '../../core/sequence/taught-text.ts';
import { parseDeviceMessage, parseServerMessage } from '../../core/sharing/message.ts';
import { type ClassRecord, headerOf, isKept, isRecord } from '../../core/sharing/record.ts';
import { parseRightsSaid } from '../../core/sharing/rights-said.ts';
import { parseShortCode, parseTyped } from '../../core/sharing/typed-code.ts';
import { readAttempt } from '../../core/spelling/read-attempt.ts';
import { isFamiliarIn, saidWord } from '../../core/spelling/said-word.ts';
import { judgePassage } from '../../core/texts/passage.ts';
import { tokensOf } from '../../core/texts/tokens.ts';
import type { Lots } from '../../core/warm-up/calling.ts';
import { doDeed } from '../../core/warm-up/deed.ts';
import { momentsOf } from '../../core/warm-up/moments.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import { placeOf, planFor, runningAt } from '../../core/warm-up/sent.ts';
import { standingAt as momentStanding } from '../../core/warm-up/standing.ts';
import { isWindowSaid } from '../../core/warm-up/window-said.ts';
import { parseNames, soundedNames } from '../../core/words/name-sounds.ts';
import { parseScreenLine } from '../../core/words/screen-line.ts';
import { parseShape } from '../../core/words/word-shape.ts';
import { fromText, joined } from '../../web/device/far/bytes.ts';
import { keyFrom, makeSecret, seal } from '../../web/device/far/cipher.ts';
import { invitationId, openInvitation } from '../../web/device/far/invitation.ts';
import { createPieces, piecesOf } from '../../web/device/far/live-pieces.ts';
import { unsealEvents } from '../../web/device/far/sealed-events.ts';
import { unlockText } from '../../web/device/log/lock.ts';
import { eventOf } from '../../web/device/log/loose-record.ts';
import { readPage } from '../../web/device/log/page.ts';
import { parseSheet, readSheet } from '../../web/device/log/sheet.ts';
import { parseDrillQuery } from '../../web/screens/after/drill-query.ts';
import { parseThresholds } from '../../web/screens/known/parse-thresholds.ts';
import { readTextBytes } from '../../web/screens/text/open-file.ts';
import { parseView } from '../../web/state/known-view.ts';
import { parseQuery, parseScreen } from '../../web/state/route.ts';
import { isWindowHere } from '../../web/warm-up/window-here.ts';
import { arbitraryEvents, SMALL_DRILL, SMALL_FORM, standingAt } from '../arbitrary-events.ts';
import { builtLexicon as lexicon } from '../built-lexicon.ts';
import { classYear } from '../class-year.ts';

const readTable = (text: string) => atOnce(parseEvidence(text));

/** Something that reads what comes from outside, with valid examples of that. */
export interface Parser {
  readonly name: string;
  readonly samples: readonly string[];
  /** Whether it takes text, or any value such as a message between windows or a record of a database. */
  readonly takes: 'text' | 'value';
  /** Reads; never throws, whatever it is given. */
  readonly read: (given: never) => unknown;
}

/** A file of the data that the first version kept. */
const museum = (name: string) =>
  readFileSync(new URL(`../museum/0.1.0/${name}`, import.meta.url), 'utf8');

const events = [
  ...classYear(classId('room'), 300),
  ...fc.sample(arbitraryEvents('room'), { numRuns: 40, seed: 1 }).flat(),
];
const copies = [museum('class-copy.jsonl'), makeLog(events), makeLog(events.slice(0, 5))];
const eventTexts = [
  ...museum('class-copy.jsonl').split('\n').slice(1, 80),
  ...events.map((one) => JSON.stringify(one)),
];
const pages = Object.values<string>(JSON.parse(museum('second-copy.json')));
const taught = taughtOf(makeProgress(SEQUENCE, 40));
const spelling = { taught, isFamiliar: isFamiliarIn(lexicon) };
const said = saidWord('shipment', lexicon) ?? [];

/** A warm-up in its middle. */
const underWay: Running = {
  classId: classId('room'),
  groupId: groupId('all'),
  drillId: drillId('d'),
  drill: SMALL_DRILL,
  standing: momentStanding(momentsOf(SMALL_DRILL).length, 1),
  blending: 'joined',
  calling: { on: true, readers: [childId('c')], upcoming: [childId('b')], calls: [childId('c')] },
  dictated: ['ship'],
  asking: null,
  rehearsed: null,
  count: 3,
  by: 'w',
};
const lots: Lots = {
  present: [childId('b'), childId('c')],
  draw: (all, count) => all.slice(0, count),
};
/** A message between devices, a sign for each byte. */
const pieceText = (said: unknown) =>
  piecesOf(said)
    .map((piece) => String.fromCharCode(...piece))
    .join('');

const text = (
  name: string,
  samples: readonly string[],
  read: (text: string) => unknown,
): Parser => ({
  name,
  samples,
  takes: 'text',
  read: read as Parser['read'],
});
const value = (
  name: string,
  samples: readonly string[],
  read: (value: unknown) => unknown,
): Parser => ({
  name,
  samples,
  takes: 'value',
  read: read as Parser['read'],
});

const lists = [
  'Robin\nWren Ash\nJay',
  'First Name,Last Name,Grade\n"Ash, Jr.",Reed,1\nWren,Moss,K\n',
  'sourcedId,status,givenName,familyName,role\n1,active,Robin,Reed,student\n2,tobedeleted,Jay,Moss,student',
  'Last\tFirst\nReed\tRobin\n',
];
const orders = [
  museum('order.csv'),
  'step,stage,grade,items\n1,Start,K,m a s\n2,Start,K,"t, i"\n',
  'm a s sh\nea=EH word:said habit:schwa',
];
const messages = [
  { t: 'proof', device: 'd', key: 'k'.repeat(87), nonce: 'n', signature: 's'.repeat(86) },
  { t: 'follow', c: 'room', after: 3 },
  { t: 'append', k: 1, c: 'room', records: [record('a'), record('b')] },
  { t: 'fetch', k: 2, invite: 'i' },
  { t: 'challenge', v: 1, nonce: 'n', now: 1, born: 'b' },
  {
    t: 'records',
    c: 'room',
    from: 0,
    to: 1,
    head: 1,
    records: [{ ...record('a'), seq: 1, at: 2 }],
  },
  { t: 'kept', k: 1, seqs: [1, 2] },
].map((message) => JSON.stringify(message));
const locked = JSON.stringify({
  format: 'sweepline-locked',
  version: 1,
  key: { name: 'PBKDF2', hash: 'SHA-256', rounds: 1, salt: 'c2FsdHNhbHRzYWx0c2FsdA==' },
  cipher: { name: 'AES-256-GCM', iv: 'aXZpdml2aXZpdml2' },
  data: 'ZGF0YWRhdGFkYXRhZGF0YWRhdGFkYXRh',
});
const links = museum('links.txt').split('\n');
const words = ['ship', 'thrush', 'said', "don't", 'knight, wrap; quilt\nstreet', 'mittens'];
const passages = [
  'The small ship sat in the mud. “A cat,” said Mr. Reed, “did nap at 9.”',
  museum('order.csv'),
];

/** Every parser there is. */
export const PARSERS: readonly Parser[] = [
  text('a copy, and the class it makes', copies, readCopy),
  value('an event, and the class it makes', eventTexts, readEvent),
  value('events of another window', [JSON.stringify(events.slice(0, 30))], (sent) =>
    Array.isArray(sent) ? sent.map(parseEvent) : [],
  ),
  value('a record of the database', eventTexts, eventOf),
  text('a page of the database', pages, (page) => readPage(classId('room'), page)),
  value('a page that is no text', pages, (page) => readPage(classId('room'), page)),
  text('a sheet of the second copy', pages, (sheet) =>
    readSheet(
      { name: 'room/a', classId: classId('room'), kind: 'open', count: 0, mark: null },
      sheet,
    ),
  ),
  text(
    'the name of a sheet',
    ['room/window', 'room/a-0~12', 'room/~gone', 'r%20m/~aside-a'],
    parseSheet,
  ),
  text(
    'a locked copy',
    [locked, museum('class-copy-locked.txt').replace(/"rounds":\d+/, '"rounds":1')],
    (file) => unlockText(file, 'three green frogs'),
  ),
  text('a class list', lists, (list) => tellApart(parseRoster(list).entries, [])),
  text('names typed', lists, (names) => soundedNames(parseNames(names), lexicon)),
  text('an order', orders, (order) => parseSequenceCsv(order)),
  text('an item', ['sh', 'ea=EH', 'word:said', 'a_e', 'habit:schwa'], parseItem),
  text('what an item may have meant', ['sh', 'ea=EH', 'word:sayd'], nearMisses),
  text('what was taught', ['step:24', 'a,m,s,t,sh,ea=EH'], (list) => parseTaught(list, SEQUENCE)),
  text(
    'what was taught, as JSON',
    ['{"step":24,"add":["sh"],"drop":["word:said"]}', '["a","m"]'],
    (json) => parseTaughtJson(json, SEQUENCE),
  ),
  text('a grade', ['K', 'Grade 2', '1st'], parseGrade),
  text('a passage', passages, (passage) => judgePassage(passage, taught, lexicon, SEQUENCE)),
  text('the tokens of a text', passages, tokensOf),
  text('a guess at a word', words, guessReading),
  text('what a child wrote', words, (wrote) => readAttempt(said, wrote, spelling)),
  text('a list for spelling papers', words, (list) => parseWords(list, lexicon)),
  text(
    'what was read, as CSV',
    ['child,day,word,cards,broke,heard\na,2026-03-02,ship,sh-i-p,2,IH\n'],
    readTable,
  ),
  text('cards as written', ['sh-i-p', 'sh i p', 'm-a_e-k'], (cards) => [
    readCards(cards, ''),
    readCards('sh-i-p', cards),
  ]),
  text('what was heard', ['IH', 'added', 'EY L'], parseHeard),
  text('a line of the word screen', ['sh-i-p', 'm-a_e-k\tM EY K', 'ra.b-b-i-t'], parseScreenLine),
  text('a shape of words', ['cvc', 'closed', 'vce'], parseShape),
  text('sounds', ['SH IH P', 'AE1'], parseSounds),
  text('a pronunciation', ['SH IH1 P', 'R AE1 B . IH0 T'], parsePronunciation),
  text('a card', ['sh=SH', 'a_e=EY', 'nk=NG+K'], parseCardId),
  text('a day', ['2026-03-02'], parseDay),
  value(
    'a check as it was read',
    [
      JSON.stringify({
        items: SMALL_FORM.items,
        marks: ['right', 'right'],
        reached: 2,
        seconds: 60,
        skippedRows: [],
      }),
    ],
    parseReading,
  ),
  text('a link to a board', ['v=1&piles=b.d.sh,a.e,t.ck&shape=closed', ...links], parseBoardLink),
  text('an address', links, (hash) => [
    parseScreen(hash),
    parseView(parseQuery(hash)),
    parseDrillQuery(parseQuery(hash)),
  ]),
  text('thresholds', ['80', '60 %'], (percent) => parseThresholds(percent, percent)),
  text('a file opened as text', passages, (file) => readTextBytes(Buffer.from(file, 'utf16le'))),
  value('a drill', [JSON.stringify(SMALL_DRILL)], isDrill),
  value('a board', [JSON.stringify(SMALL_DRILL.board)], isBoard),
  value('a form of a check', [JSON.stringify(SMALL_FORM)], isForm),
  value(
    'a place in the order',
    [JSON.stringify(standingAt(12)), JSON.stringify({ ...standingAt(3), own: SEQUENCE })],
    isGroupPlace,
  ),
  value('an order as it is kept', [JSON.stringify(SEQUENCE)], isSequence),
  value(
    'an item as it is kept',
    SEQUENCE.steps.slice(0, 40).map(({ items }) => JSON.stringify(items[0])),
    isItem,
  ),
  text('what a device says', messages, parseDeviceMessage),
  text('what the server says', messages, parseServerMessage),
  value('a shared record', [JSON.stringify(record('a'))], isRecord),
  value(
    'a record as the server has it',
    [JSON.stringify({ ...record('a'), seq: 1, at: 2 })],
    isKept,
  ),
  text(
    'rights said',
    [
      '{"says":"revoke","device":"d"}',
      '{"says":"gone"}',
      JSON.stringify({
        says: 'epoch',
        epoch: 2,
        sealed: { d: { run: 'cg', private: null } },
        chain: { run: 'cg', private: 'cA' },
      }),
    ],
    parseRightsSaid,
  ),
  text('a sealed record', [...eventTexts.slice(0, 20), ...pages], readSealed),
  text(
    'an invitation',
    ['["room","founder","[]"]', '["room","founder",[{},{},{},{}]]'],
    readInvitation,
  ),
  text(
    'a link or a code of an invitation',
    ['ABCD-EFGH-JKLM', `#/join/${'A'.repeat(22)}`],
    (link) => [parseShortCode(link), parseTyped(link), parseScreen(link)],
  ),
  text('what is said of the moment', [pieceText(1), pieceText('here')], (piece) =>
    createPieces().take('a', bytesOf(piece)),
  ),
  value(
    'what a window says of the warm-up',
    [
      JSON.stringify({ kind: 'plan', plan: planFor(underWay, null, 'p') }),
      JSON.stringify({
        kind: 'place',
        place: placeOf(underWay, planFor(underWay, null, 'p')),
        granted: null,
      }),
      '{"kind":"wish","id":"w","drillId":"d","from":3,"deed":{"does":"act","act":"next"}}',
      '{"kind":"wish","id":"w","drillId":"d","from":3,"deed":{"does":"call","child":"c"}}',
      '{"kind":"ask"}',
    ],
    hearWindow,
  ),
  value(
    'what a window says of itself',
    ['{"from":"w","kind":"here","role":"desk","drillId":"d"}', '{"from":"w","kind":"gone"}'],
    isWindowHere,
  ),
];

/** Each sign of a text as a byte; signs beyond a byte are cut to one. */
function bytesOf(given: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(given, (sign) => sign.charCodeAt(0));
}

/** A body that the server changed, and one that a member of the class sealed. */
async function readSealed(given: string): Promise<unknown> {
  const key = await keyFrom(makeSecret(), 'room', 'fuzz');
  const header = record('a');
  const lengths = new DataView(new ArrayBuffer(8));
  const packed = deflateSync(bytesOf(given));
  lengths.setUint32(0, packed.length);
  lengths.setUint32(4, given.length);
  const plain = joined(new Uint8Array(lengths.buffer), packed);
  const bodies = [
    given,
    await seal(key, headerOf(classId('room'), header), bytesOf(given)),
    await seal(key, headerOf(classId('room'), header), plain),
  ];
  return Promise.all(bodies.map((body) => unsealEvents(key, classId('room'), { ...header, body })));
}

/** A box that the server changed, and one that whoever has the link sealed. */
async function readInvitation(given: string): Promise<unknown> {
  const secret = 'A'.repeat(22);
  const key = await keyFrom(fromText(secret), 'sweepline/1', 'invitation box');
  const sealed = await seal(key, await invitationId(secret), bytesOf(given));
  return [await openInvitation(secret, given), await openInvitation(secret, sealed)];
}

/** A warm-up of which a window told, after the next act. */
function hearWindow(said: unknown): unknown {
  if (!isWindowSaid(said)) return null;
  if (said.kind === 'wish') return doDeed(underWay, said.deed, lots);
  if (said.kind === 'ask') return null;
  const [plan, place] =
    said.kind === 'plan'
      ? [said.plan, placeOf(underWay, planFor(underWay, null, 'p'))]
      : [planFor(underWay, null, 'p'), said.place];
  return doDeed(runningAt(plan, place, []), { does: 'act', act: 'next' }, lots);
}

function readCopy(copy: string): unknown {
  const log = parseLog(copy);
  return 'events' in log ? classOf(log.events) : log;
}

function readEvent(given: unknown): unknown {
  const read = parseEvent(given);
  return 'event' in read ? classOf([...events.slice(0, 20), read.event]) : read;
}

/** What a screen makes of events first: the class, what of it is dated ahead, and the evidence of its drills. */
function classOf(log: Parameters<typeof replay>[1]): unknown {
  const state = applyEvents(replay(classId('room'), log), log);
  return [
    state.last,
    findAhead(log, 1.8e12).right.length,
    [...state.drills.values()].map((drill) => evidenceOf(drill).length),
  ];
}

function record(id: string): ClassRecord {
  return {
    id,
    writer: 'w',
    count: 1,
    epoch: 1,
    lane: 'run',
    body: 'Ym9keQ',
    signature: 's'.repeat(86),
  };
}
