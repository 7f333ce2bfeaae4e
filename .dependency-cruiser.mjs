/**
 * The architecture as rules over the import graph: each with its name and its reason. Checked by
 * house/check-boundaries.ts.
 *
 * @typedef {import('dependency-cruiser').IRegularForbiddenRuleType} Rule
 */
const tests = '[.](test|journey)[.]tsx?$';

/** The rooms of the core in their order: each may use those before it. */
const rooms = [
  'language',
  'words',
  'sequence',
  'texts',
  'boards/shapes',
  'boards/judge',
  'boards/runs',
  'boards/search',
  'spelling',
  'drills',
  'dictation',
  'checks',
  'log',
  'sharing',
  'papers',
  'warm-up',
  'learners',
  'facts',
  'story',
  'groups',
  'ahead',
];

/** @type {Rule[]} */
const roomRules = rooms.slice(0, -1).map((room, place) => ({
  name: `${room.startsWith('boards/') ? 'boards-rooms: ' : ''}${room}-before-${rooms[place + 1]}`,
  comment: `core/${room} is built on by ${rooms.slice(place + 1).join(', ')}: it cannot know them.`,
  severity: 'error',
  from: { path: `^core/${room}/`, pathNot: tests },
  to: { path: `^core/(${rooms.slice(place + 1).join('|')})/` },
}));

/** The floors of the web from the top down: each may use those below it, never one above. */
const floors = ['shell', 'screens', 'controls', 'wording', 'warm-up', 'state', 'device'];

/** @type {Rule[]} */
const floorRules = floors.slice(1).map((floor, place) => ({
  name: `web-floors: ${floor}-below-${floors[place]}`,
  comment: `web/${floor} carries ${floors.slice(0, place + 1).join(', ')}: it cannot know them.`,
  severity: 'error',
  from: { path: `^web/${floor}/`, pathNot: tests },
  to: { path: `^web/(main[.]tsx$|(${floors.slice(0, place + 1).join('|')})/)` },
}));

/** The shells around the core: none needs another. */
const shells = ['web', 'cli', 'lexicon', 'ordering', 'bench', 'server'];

/** @type {Rule[]} */
const shellRules = shells.map((shell) => ({
  name: `${shell}-apart`,
  comment: 'The shells share the core and nothing else, so that each can be left out or replaced.',
  severity: 'error',
  from: { path: `^${shell}/`, pathNot: tests },
  to: { path: `^(${shells.filter((other) => other !== shell).join('|')})/`, pathNot: '/dist/' },
}));

/** @type {Rule[]} */
const forbidden = [
  {
    name: 'core-stands-alone',
    comment:
      'The core is pure: no page, no files, no packages, no Node. It runs the same in a browser, a ' +
      'terminal and a server, and the same seed gives the same drill for ever.',
    severity: 'error',
    from: { path: '^core/', pathNot: tests },
    to: { pathNot: '^core/' },
  },
  ...roomRules,
  ...floorRules,
  {
    name: 'screens-apart',
    comment:
      'No screen knows another: what two of them share lies in the controls, the wording or the state.',
    severity: 'error',
    from: { path: '^web/screens/([^/]+)/', pathNot: tests },
    to: { path: '^web/screens/', pathNot: '^web/screens/$1/' },
  },
  ...shellRules,
  {
    name: 'lexicon-from-language-and-words',
    comment:
      'The word list is built from the language and the words; it must not change with a board.',
    severity: 'error',
    from: { path: '^lexicon/', pathNot: tests },
    to: { path: '^core/', pathNot: '^core/(language|words)/' },
  },
  {
    name: 'server-from-core',
    comment:
      'The server judges by the same rules as every device, and gives out files with the same headers as ' +
      'the app does alone; it needs nothing else of the house, and no screen.',
    severity: 'error',
    from: { path: '^server/', pathNot: tests },
    to: {
      path: '^(web|print|cli|lexicon|ordering|bench|house)/',
      pathNot: '^house/(serve|headers)[.]ts$',
    },
  },
  {
    name: 'print-from-core',
    comment:
      'Paper and slides are made from values of the core, the same in the app and in the terminal: bytes ' +
      'in, bytes out.',
    severity: 'error',
    from: { path: '^print/', pathNot: tests },
    to: { path: '^(web|cli|lexicon|bench|house)/' },
  },
  {
    name: 'page-without-node',
    comment: 'What runs in a browser cannot use what only Node has.',
    severity: 'error',
    from: { path: '^(web|print)/', pathNot: tests },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'page-from-shipped-packages',
    comment: 'A package that reaches teachers is a dependency, with a licence to carry in NOTICE.',
    severity: 'error',
    from: { path: '^(web|print)/', pathNot: tests },
    to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'] },
  },
  {
    name: 'tests-are-leaves',
    comment:
      'A test may use anything, a measurement may borrow its browser; nothing that ships may use a test.',
    severity: 'error',
    from: { pathNot: ['^test/', '^bench/', tests] },
    to: { path: ['^test/', tests] },
  },
  {
    name: 'no-circles',
    comment: 'Two modules that need each other are one module, or hide a third.',
    severity: 'error',
    from: {},
    to: { circular: true },
  },
  {
    name: 'nothing-missing',
    comment: 'An import that leads nowhere.',
    severity: 'error',
    from: {},
    to: { couldNotResolve: true, pathNot: ['^virtual:', '/dist/'] },
  },
];

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden,
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(lexicon/)?dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.css', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default'],
    },
  },
};
