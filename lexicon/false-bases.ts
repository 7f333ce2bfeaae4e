import type { Morphemes } from '../core/language/pronunciation.ts';

/**
 * Words that pass for base and ending by sound and part of speech, but are not
 * built that way today. Each with the base it is not built from. Sorted.
 */
export const FALSE_BASES: Readonly<Record<string, string>> = {
  adder: 'add; the snake',
  after: 'aft',
  army: 'arm',
  banner: 'ban',
  batter: 'bat; mostly the mixture',
  better: 'bet',
  bunting: 'bunt',
  butter: 'butt',
  candid: 'can and did',
  candidate: 'can, did and ate',
  carter: 'cart',
  computer: 'compute; taught as a word of its own, com·pu·ter',
  computers: 'compute',
  corner: 'corn',
  counter: 'count',
  crystallize: 'crystal and ize; crys·tal·lize',
  crystallized: 'crystal and ize',
  forest: 'fore',
  hammer: 'ham',
  hamper: 'ham',
  its: 'it',
  itself: 'its and elf',
  kitten: 'kit',
  latter: 'late',
  letter: 'let',
  limber: 'limb',
  liver: 'live',
  manner: 'man',
  master: 'mast',
  matter: 'mat',
  meter: 'mete',
  morning: 'morn',
  number: 'numb',
  offer: 'off',
  pepper: 'pep',
  person: 'per and son',
  proper: 'prop',
  quarter: 'quart',
  represent: 'rep and resent',
  rubber: 'rub',
  summer: 'sum',
  tender: 'tend',
  witness: 'wit',
};

/** Built from a base although WordNet does not link them. */
export const TRUE_BASES: ReadonlySet<string> = new Set(
  `ashen assembler babysitter basement biker blogger breather bullfighter caseworker coder commoner
   creamer decoder dimmer diner dryer earthen golden grabber grader greaser grouper hater identifier
   inhaler insider jumper landscaper leaden oaken outsider plumber porker prisoner ranger rapper
   retainer reveler revolver rooster scorcher scraper seeker setter silken slicker sneaker sniper
   staffer streamer swollen tanker teetotaler trader trawler treasurer trooper troubleshooter tuner
   undertaker user villager wader widower woodcutter wooden woolen woollen writer zinger`
    .trim()
    .split(/\s+/),
);

/** Edges that no base in the list shows: *measle*, *safe·ty*, *mistle·toe*. Sorted. */
export const EDGES: Readonly<Record<string, Morphemes>> = {
  acreage: { breaks: [4], suffixAt: null },
  battlement: { breaks: [6], suffixAt: null },
  battlements: { breaks: [6, 10], suffixAt: 10 },
  cheeseburger: { breaks: [6], suffixAt: null },
  cheeseburgers: { breaks: [6, 12], suffixAt: 12 },
  cuttlefish: { breaks: [6], suffixAt: null },
  embezzlement: { breaks: [8], suffixAt: null },
  measles: { breaks: [6], suffixAt: 6 },
  mistletoe: { breaks: [6], suffixAt: null },
  nineties: { breaks: [4, 7], suffixAt: 7 },
  ninetieth: { breaks: [4], suffixAt: null },
  ninety: { breaks: [4], suffixAt: null },
  oodles: { breaks: [5], suffixAt: 5 },
  really: { breaks: [4], suffixAt: null },
  safety: { breaks: [4], suffixAt: null },
  shootout: { breaks: [5], suffixAt: null },
  sportswear: { breaks: [5, 6], suffixAt: null },
  vittles: { breaks: [6], suffixAt: 6 },
};
